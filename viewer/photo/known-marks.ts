// What the marks of a photograph are marks of: the panel's corners, a sheet of paper, points of one's own. Spots in the picture
// stay; what they are on the panel is said anew, and what of it is lost is said too. Pure.

import type { FourPoints, PhotoMarks } from "../../src/design/photo-design.ts";
import type { MarksText } from "../../src/design/photo-edit.ts";
import { markPairs } from "../../src/design/photo-plane.ts";
import { markName } from "../../src/design/photo-words.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { spotsOf } from "./photo-state.ts";

export type Known = "panel" | "paper" | "points";

export type MarksMade =
  | {
      readonly kind: "made";
      readonly marks: MarksText;
      /** What is no more in the text, as the end of a sentence; empty where nothing is lost. */
      readonly lost: string;
    }
  | { readonly kind: "refused"; readonly why: string };

/** `corners` are the panel's; null where they are not known. */
export function marksFor(
  known: Known,
  now: PhotoMarks,
  panelCorners: FourPoints | null,
): MarksMade {
  if (known === "paper") return paperMarks(now);
  const corners = known === "panel" ? panelCorners : [];
  if (corners === null) return { kind: "refused", why: NO_CORNERS };
  // Marks beyond the four corners stay what they were.
  const points = markPairs(now).map(({ from, to }, index) => ({
    inPicture: from,
    onPanel: corners[index] ?? rounded(to),
  }));
  return { kind: "made", marks: { kind: "points", points }, lost: "" };
}

function paperMarks(now: PhotoMarks): MarksMade {
  const [a, b, c, d, ...more] = spotsOf(now);
  if (a === undefined || b === undefined || c === undefined || d === undefined)
    return { kind: "refused", why: "a sheet of paper has four corners, and fewer are marked" };
  const sheet = { size: "a4" as const, at: { x: 0, y: 0 }, turn: degrees(0) };
  const names = more.map((_, index) => markName(index + 4, "points")).join(", ");
  const gone = more.length === 0 ? "" : `${names} and `;
  const lost = `: ${gone}the places of the marks on the panel are struck out, and undo brings them back`;
  return {
    kind: "made",
    marks: { kind: "sheet", sheet: { ...sheet, corners: [a, b, c, d] } },
    lost: now.kind === "points" ? lost : "",
  };
}

const rounded = ({ x, y }: PlanePoint): PlanePoint => ({
  x: Math.round(x * 1000) / 1000,
  y: Math.round(y * 1000) / 1000,
});

export const NO_CORNERS = "the panel's corners are not known until its faults are mended";

/** From the edge of a picture to the first marks, as a share of it. */
const INSET = 0.2;

/** Near the corners of the picture, as marks of the panel's corners. */
export const firstMarks = (
  { width, height }: { width: number; height: number },
  corners: FourPoints,
): MarksText => {
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
