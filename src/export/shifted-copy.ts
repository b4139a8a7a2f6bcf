// Shapes that are shifted copies of one another: a legend's letters come again and again, and what is worked out for
// one of them holds for all. Takes shapes as runs of contours or paths; keeps one thing for each that is not a copy.

import type { Contour, Path, Point } from "../geometry/contour.ts";
import { point } from "../geometry/contour.ts";
import { shiftNoise } from "../geometry/tolerance.ts";

/** What is placed together: a region's outline and holes, or one path. */
export type Outlines = readonly (Contour | Path)[];

export interface KeptCopy<Kept> {
  /** The shape that was met first. */
  readonly outlines: Outlines;
  readonly kept: Kept;
}

/** What is kept for a shape or for one that it is a shifted copy of; made on the first meeting. */
export type CopyKeeper<Kept> = (outlines: Outlines, make: () => Kept) => KeptCopy<Kept>;

export const copyKeeper = <Kept>(): CopyKeeper<Kept> => {
  const known = new Map<number, KeptCopy<Kept>[]>();
  return (outlines, make) => {
    const key = roughKey(outlines);
    const candidates = known.get(key);
    const twin = candidates?.find((other) => isShiftedCopy(other.outlines, outlines));
    if (twin !== undefined) return twin;
    const fresh = { outlines, kept: make() };
    if (candidates === undefined) known.set(key, [fresh]);
    else candidates.push(fresh);
    return fresh;
  };
};

/** A shape's first corner, or its centre where it is a circle: where it stands. */
export const firstPlace = (outlines: Outlines): Point => {
  const first = outlines[0];
  if (first?.kind === "circle") return first.centre;
  return first?.vertices[0] ?? NOWHERE;
};

const NOWHERE: Point = point(0, 0);

/** Steps in which the first edge is told apart: copies on both sides of a step are only kept twice. */
const KEY_STEPS = 1e4;
const KEY_SPREAD = 65_536;

/** Alike for copies: how many corners there are, and where the second lies from the first. */
const roughKey = (outlines: Outlines): number => {
  let count = 0;
  for (const outline of outlines) count += outline.kind === "circle" ? 1 : outline.vertices.length;
  const first = outlines[0];
  if (first === undefined) return count;
  if (first.kind === "circle") return count + Math.round(first.radius * KEY_STEPS) * KEY_SPREAD;
  const [from = NOWHERE, to = NOWHERE] = first.vertices;
  const edge = Math.round((to.x - from.x) * KEY_STEPS) + Math.round((to.y - from.y) * KEY_STEPS);
  return count + edge * KEY_SPREAD;
};

const isShiftedCopy = (a: Outlines, b: Outlines): boolean => {
  if (a.length !== b.length) return false;
  const from = firstPlace(a);
  const to = firstPlace(b);
  const shift = { x: to.x - from.x, y: to.y - from.y };
  return a.every((outline, index) => isShifted(outline, b[index]!, shift));
};

interface Shift {
  readonly x: number;
  readonly y: number;
}

const isShifted = (a: Contour | Path, b: Contour | Path, shift: Shift): boolean => {
  if (a.kind === "circle")
    return (
      b.kind === "circle" && isNear(a.radius, b.radius) && isShiftedPoint(a.centre, b.centre, shift)
    );
  if (b.kind !== a.kind || a.vertices.length !== b.vertices.length) return false;
  for (let index = 0; index < a.vertices.length; index += 1) {
    const corner = a.vertices[index]!;
    const other = b.vertices[index]!;
    if (!isNear(corner.bulge, other.bulge) || !isShiftedPoint(corner, other, shift)) return false;
  }
  return true;
};

const isShiftedPoint = (a: Point, b: Point, shift: Shift): boolean =>
  isNear(a.x + shift.x, b.x) && isNear(a.y + shift.y, b.y);

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= shiftNoise;
