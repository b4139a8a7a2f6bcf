// Words and numbers that stand on a printed part, as plain polygons: a printed line is 0.45 mm wide and its letters are read,
// not fitted, so that the hundred arcs of a figure would only make files large.

import type { Contour, Point, Region } from "../../geometry/contour.ts";
import { flattened } from "../../geometry/flatten.ts";
import type { Mm } from "../../geometry/quantity.ts";
import { polygon } from "../../geometry/shapes.ts";
import type { Face } from "../../lettering/face.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import { setText } from "../../lettering/set-text.ts";

/** A twentieth of a printed line. */
const RELIEF_CHORD = 0.02;

/** The boldest outline face there is reads best in print; null where there is none. */
export const reliefFace = ({ faces }: Lettering): Face | null => {
  const outlines = [...faces.values()].filter(({ kind }) => kind === "outline");
  return outlines.find(({ id }) => id.includes("bold")) ?? outlines[0] ?? null;
};

/** Set in the middle of x = 0, its foot at y = 0. */
export const reliefText = (face: Face, text: string, capHeight: Mm): readonly Region[] =>
  setText(face, text, { capHeight, align: "middle" }).fills.map(({ outline, holes }) => ({
    outline: coarse(outline),
    holes: holes.map(coarse),
  }));

/** Corners are left out as long as none of them lies farther than the chord from the line that stands for them. */
const coarse = (contour: Contour): Contour => {
  const corners = flattened(contour, RELIEF_CHORD / 4);
  const start = corners[0];
  if (start === undefined) return contour;
  const far = farthest(corners, (corner) => distance(corner, start));
  const halves = [corners.slice(0, far.at + 1), [...corners.slice(far.at), start]];
  const kept = halves.flatMap((half) => thinned(half).slice(0, -1));
  return kept.length < LEAST_CORNERS ? contour : polygon(kept);
};

const LEAST_CORNERS = 3;

/** Both ends stay. */
const thinned = (run: readonly Point[]): readonly Point[] => {
  const [from, to] = [run[0], run.at(-1)];
  if (from === undefined || to === undefined || run.length < LEAST_CORNERS) return run;
  const { at, away } = farthest(run, (corner) => offLine(corner, from, to));
  if (away <= RELIEF_CHORD) return [from, to];
  return [...thinned(run.slice(0, at + 1)).slice(0, -1), ...thinned(run.slice(at))];
};

const farthest = (
  run: readonly Point[],
  awayOf: (corner: Point) => number,
): { readonly at: number; readonly away: number } => {
  let best = { at: 0, away: 0 };
  for (const [at, corner] of run.entries()) {
    const away = awayOf(corner);
    if (away > best.away) best = { at, away };
  }
  return best;
};

const distance = (a: Point, b: Point): number =>
  Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));

/** From the line through two places; from the first where they are one. */
const offLine = (corner: Point, from: Point, to: Point): number => {
  const length = distance(from, to);
  if (length === 0) return distance(corner, from);
  const across = (to.x - from.x) * (corner.y - from.y) - (to.y - from.y) * (corner.x - from.x);
  return Math.abs(across) / length;
};
