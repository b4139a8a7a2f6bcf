// From a photograph's marks to the panel's plane: the map from pixels to millimetres, how far each mark lies from where the
// others put it, and how near a place that is read from it can be believed. Facts only.

import { fitHomography, type Homography, isMirroring, stretchAt } from "../geometry/homography.ts";
import type { PlanePoint, PointPair } from "../geometry/homography-pair.ts";
import type { HomographyTrouble } from "../geometry/homography-trouble.ts";
import { type PairWithout, pairError, withoutEach } from "../geometry/homography-without.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { direction } from "../geometry/trigonometry.ts";
import { type FourPoints, type PhotoMarks, type PhotoSheet, SHEET_SIZES } from "./photo-design.ts";

export type PhotoPlane =
  | {
      readonly kind: "plane";
      /** Pixels of the picture to millimetres on the panel. */
      readonly map: Homography;
      /** How far one pixel reaches on the panel, at the mark where it reaches farthest. */
      readonly pixel: Mm;
      readonly check: PhotoCheck;
      readonly accuracy: PhotoAccuracy;
    }
  | { readonly kind: "trouble"; readonly trouble: PhotoTrouble };

/** How the marks stand to each other. */
export type PhotoCheck =
  /** Four always fit. */
  | { readonly kind: "unchecked" }
  | {
      readonly kind: "checked";
      /** By mark, in the order of the text. */
      readonly marks: readonly PairWithout[];
      /** The largest distance of a mark from where the others put it, or what is left of all of them where that is more. */
      readonly disagreement: Mm;
    };

/** What a place read from the picture may be off by. */
export type PhotoAccuracy =
  /** By the marks' own disagreement, or a pixel where that is more. */
  | { readonly kind: "checked"; readonly within: Mm }
  /** Nothing checks these marks: what is assumed of a mark that was set by hand. */
  | { readonly kind: "assumed"; readonly within: Mm; readonly untold: readonly number[] }
  /** The marks disagree by more than is assumed, and the wrong one may be one of these, of whose error only a part shows. */
  | { readonly kind: "unknown"; readonly untold: readonly number[] };

export type PhotoTrouble =
  | HomographyTrouble
  /** The marks go round the panel the other way than they do in the picture. */
  | { readonly kind: "mirrored" };

export const photoPlane = (marks: PhotoMarks): PhotoPlane => {
  const pairs = markPairs(marks);
  const fit = fitHomography(pairs);
  if (fit.kind === "degenerate") return { kind: "trouble", trouble: fit.trouble };
  const { map } = fit;
  // A picture's y goes down and a panel's up: the way from one to the other mirrors.
  if (pairs.some(({ from }) => !isMirroring(map, from)))
    return { kind: "trouble", trouble: { kind: "mirrored" } };
  const pixel = mm(Math.max(...pairs.map(({ from }) => stretchAt(map, from))));
  const check = checkOf(pairs, fit.rms);
  return { kind: "plane", map, pixel, check, accuracy: accuracyOf(check, pairs.length, pixel) };
};

const checkOf = (pairs: readonly PointPair[], rms: number): PhotoCheck => {
  const left = pairError(rms, pairs.length);
  if (left === null) return { kind: "unchecked" };
  const marks = withoutEach(pairs);
  const apart = marks.flatMap((mark) => (mark.kind === "put" ? [mark.apart] : []));
  return { kind: "checked", marks, disagreement: mm(Math.max(left, ...apart)) };
};

/** A mark under the magnifier is within this of its spot (common practice, from memory, unverified). Pixels. */
export const ASSUMED_MARKING = 2;

const accuracyOf = (check: PhotoCheck, count: number, pixel: Mm): PhotoAccuracy => {
  // A place is itself read to a pixel.
  const assumed = mm((1 + ASSUMED_MARKING) * pixel);
  if (check.kind === "unchecked")
    return { kind: "assumed", within: assumed, untold: [...Array(count).keys()] };
  const { marks, disagreement } = check;
  const untold = [...marks.entries()].flatMap(([mark, { kind }]) =>
    kind === "untold" ? [mark] : [],
  );
  if (untold.length === 0) return { kind: "checked", within: mm(Math.max(disagreement, pixel)) };
  return disagreement > assumed
    ? { kind: "unknown", untold }
    : { kind: "assumed", within: assumed, untold };
};

/** Each mark in the picture and on the panel. */
export const markPairs = (marks: PhotoMarks): readonly PointPair[] => {
  switch (marks.kind) {
    case "points":
      return marks.points.map(({ inPicture, onPanel }) => ({ from: inPicture, to: onPanel }));
    case "sheet": {
      const [a, b, c, d] = marks.sheet.corners;
      const [lowerLeft, lowerRight, upperRight, upperLeft] = sheetCorners(marks.sheet);
      return [
        { from: a, to: lowerLeft },
        { from: b, to: lowerRight },
        { from: c, to: upperRight },
        { from: d, to: upperLeft },
      ];
    }
  }
};

/** Lower left, lower right, upper right, upper left, in millimetres on the panel. */
export const sheetCorners = ({
  size,
  at,
  turn,
}: Pick<PhotoSheet, "size" | "at" | "turn">): FourPoints => {
  const { width, height } = SHEET_SIZES[size];
  const along = direction(turn);
  const put = (x: number, y: number): PlanePoint => ({
    x: at.x + x * along.x - y * along.y,
    y: at.y + x * along.y + y * along.x,
  });
  return [put(0, 0), put(width, 0), put(width, height), put(0, height)];
};
