// What the marks of a photograph are marks of: the panel's corners, a sheet of paper, points of one's own. Spots in the picture
// stay, but for paper, whose corners lie elsewhere: its marks begin at the picture's own corners. What they are on the panel is
// said anew, and what of it is lost is said too. Pure.

import type { FourPoints, PhotoMarks } from "../../src/design/photo-design.ts";
import type { MarksText } from "../../src/design/photo-edit.ts";
import { markPairs } from "../../src/design/photo-plane.ts";
import { markName } from "../../src/design/photo-words.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { spotsOf } from "./mark-spots.ts";

export type Known = "panel" | "paper" | "points";

export type MarksMade =
  | {
      readonly kind: "made";
      readonly marks: MarksText;
      /** What is no more in the text, as the end of a sentence; empty where nothing is lost. */
      readonly lost: string;
    }
  | { readonly kind: "refused"; readonly why: string };

interface Size {
  readonly width: number;
  readonly height: number;
}

interface KnownOf {
  /** The panel's; null where they are not known. */
  readonly panelCorners: FourPoints | null;
  /** The picture's, pixels; null where it is not there. */
  readonly size: Size | null;
}

export function marksFor(
  known: Known,
  now: PhotoMarks,
  { panelCorners, size }: KnownOf,
): MarksMade {
  if (known === "paper") return paperMarks(now, size);
  const corners = known === "panel" ? panelCorners : [];
  if (corners === null) return { kind: "refused", why: NO_CORNERS };
  // Marks beyond the four corners stay what they were.
  const points = markPairs(now).map(({ from, to }, index) => ({
    inPicture: from,
    onPanel: corners[index] ?? rounded(to),
  }));
  return { kind: "made", marks: { kind: "points", points }, lost: "" };
}

function paperMarks(now: PhotoMarks, size: Size | null): MarksMade {
  if (size === null) return { kind: "refused", why: "the picture is not there to be marked" };
  const more = spotsOf(now).slice(4);
  const sheet = { size: "a4" as const, at: { x: 0, y: 0 }, turn: degrees(0) };
  const names = more.map((_, index) => markName(index + 4, "points")).join(", ");
  const gone = more.length === 0 ? "" : `${names} and `;
  const lost = `. Now set the four marks on the corners of the paper: ${gone}the places of the marks on the panel are struck out, and undo brings them back`;
  return {
    kind: "made",
    marks: { kind: "sheet", sheet: { ...sheet, corners: cornersOf(size) } },
    lost: now.kind === "points" ? lost : "",
  };
}

/** Of the picture, in the order of the marks of a sheet. */
const cornersOf = ({ width, height }: Size): FourPoints => [
  { x: 0, y: height },
  { x: width, y: height },
  { x: width, y: 0 },
  { x: 0, y: 0 },
];

/** How many marks of a sheet of paper are still where they began: they tell nothing yet. */
export const unsetMarks = (of: PhotoMarks, size: Size): number => {
  if (of.kind === "points") return 0;
  const begun = cornersOf(size);
  return of.sheet.corners.filter(({ x, y }, index) => x === begun[index]?.x && y === begun[index].y)
    .length;
};

const rounded = ({ x, y }: PlanePoint): PlanePoint => ({
  x: Math.round(x * 1000) / 1000,
  y: Math.round(y * 1000) / 1000,
});

export const NO_CORNERS = "the panel's corners are not known until its faults are mended";

/** From the edge of a picture to the first marks, as a share of it. */
const INSET = 0.2;

/** Near the corners of the picture, as marks of the panel's corners. */
export const firstMarks = ({ width, height }: Size, corners: FourPoints): MarksText => {
  const spot = (across: number, down: number): PlanePoint => ({
    x: Math.round(across * width),
    y: Math.round(down * height),
  });
  const [lowerLeft, lowerRight, upperRight, upperLeft] = corners;
  return {
    kind: "points",
    points: [
      { inPicture: spot(INSET, 1 - INSET), onPanel: lowerLeft },
      { inPicture: spot(1 - INSET, 1 - INSET), onPanel: lowerRight },
      { inPicture: spot(1 - INSET, INSET), onPanel: upperRight },
      { inPicture: spot(INSET, INSET), onPanel: upperLeft },
    ],
  };
};
