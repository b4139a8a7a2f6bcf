// From a photograph's marks to the panel's plane: the map from pixels to millimetres, how far each mark lies off it, and how
// near a place that is read from it can be believed. Facts only.

import { fitHomography, type Homography, isMirroring, stretchAt } from "../geometry/homography.ts";
import type { PlanePoint, PointPair } from "../geometry/homography-pair.ts";
import type { HomographyTrouble } from "../geometry/homography-trouble.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { direction } from "../geometry/trigonometry.ts";
import { type PhotoMarks, type PhotoSheet, SHEET_SIZES } from "./photo-design.ts";

export type PhotoPlane =
  | {
      readonly kind: "plane";
      /** Pixels of the picture to millimetres on the panel. */
      readonly map: Homography;
      /** By mark, in the order of the text. */
      readonly residuals: readonly Mm[];
      readonly rms: Mm;
      readonly worst: { readonly mark: number; readonly residual: Mm };
      /** How far one pixel reaches on the panel, at the mark where it reaches farthest. */
      readonly pixel: Mm;
      /** What a place read from the picture may be off by: the worst mark's residual, or a pixel where that is more. */
      readonly accuracy: Mm;
    }
  | { readonly kind: "trouble"; readonly trouble: PhotoTrouble };

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
  const residuals = fit.residuals.map(mm);
  const worst = residuals.reduce(
    (most, residual, mark) => (residual > most.residual ? { mark, residual } : most),
    { mark: 0, residual: residuals[0] ?? mm(0) },
  );
  const pixel = mm(Math.max(...pairs.map(({ from }) => stretchAt(map, from))));
  const accuracy = mm(Math.max(worst.residual, pixel));
  return { kind: "plane", map, residuals, rms: mm(fit.rms), worst, pixel, accuracy };
};

/** Each mark in the picture and on the panel. */
export const markPairs = (marks: PhotoMarks): readonly PointPair[] => {
  switch (marks.kind) {
    case "points":
      return marks.points.map(({ inPicture, onPanel }) => ({ from: inPicture, to: onPanel }));
    case "sheet": {
      const corners = sheetCorners(marks.sheet);
      return marks.sheet.corners.map((from, index) => ({ from, to: corners[index] ?? from }));
    }
  }
};

/** Lower left, lower right, upper right, upper left, in millimetres on the panel. */
export const sheetCorners = ({
  size,
  at,
  turn,
}: Pick<PhotoSheet, "size" | "at" | "turn">): readonly PlanePoint[] => {
  const { width, height } = SHEET_SIZES[size];
  const along = direction(turn);
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ].map(([x = 0, y = 0]) => ({
    x: at.x + x * along.x - y * along.y,
    y: at.y + x * along.y + y * along.x,
  }));
};
