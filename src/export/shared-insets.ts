// Insets of shapes that recur: a legend's letters come again and again, each a shifted copy of one before, and shifting the
// first one's inset is ten times faster than working it out anew. Gives a function that remembers for one set-up.

import type { Contour, Point, Region } from "../geometry/contour.ts";
import { insetRegions } from "../geometry/inset.ts";
import { placedRegion, placement } from "../geometry/transform.ts";

/** What is left of a shape drawn in by a distance; nothing where it is nowhere wider than twice that. */
export type Inset = (region: Region, distance: number) => readonly Region[];

export const freshInset: Inset = (region, distance) => insetRegions([region], distance);

/** Shifted copies agree to the rounding of their coordinates: 2^-52 x 1000 mm is 2e-13 mm, summed a few times. */
const SHIFT_NOISE = 1e-9;

interface KnownInset {
  readonly region: Region;
  readonly distance: number;
  readonly inset: readonly Region[];
}

export const sharedInsets = (): Inset => {
  const known = new Map<number, KnownInset[]>();
  return (region, distance) => {
    const size = vertexCount(region);
    const candidates = known.get(size) ?? [];
    const twin = candidates.find(
      (other) => other.distance === distance && isShiftedCopy(other.region, region),
    );
    if (twin !== undefined) {
      const from = firstPlace(twin.region.outline);
      const to = firstPlace(region.outline);
      const shift = placement(to.x - from.x, to.y - from.y);
      return twin.inset.map((part) => placedRegion(part, shift));
    }
    const inset = freshInset(region, distance);
    candidates.push({ region, distance, inset });
    known.set(size, candidates);
    return inset;
  };
};

const vertexCount = (region: Region): number =>
  [region.outline, ...region.holes].reduce((count, contour) => count + cornersOf(contour), 0);

const cornersOf = (contour: Contour): number =>
  contour.kind === "circle" ? 1 : contour.vertices.length;

const firstPlace = (contour: Contour): Point =>
  contour.kind === "circle" ? contour.centre : (contour.vertices[0] ?? NOWHERE);

const NOWHERE: Point = placement(0, 0);

const isShiftedCopy = (a: Region, b: Region): boolean => {
  if (a.holes.length !== b.holes.length) return false;
  const from = firstPlace(a.outline);
  const to = firstPlace(b.outline);
  const shift = { x: to.x - from.x, y: to.y - from.y };
  return (
    isShiftedContour(a.outline, b.outline, shift) &&
    a.holes.every((hole, index) => {
      const other = b.holes[index];
      return other !== undefined && isShiftedContour(hole, other, shift);
    })
  );
};

interface Shift {
  readonly x: number;
  readonly y: number;
}

const isShiftedContour = (a: Contour, b: Contour, shift: Shift): boolean => {
  if (a.kind === "circle" || b.kind === "circle")
    return (
      a.kind === "circle" &&
      b.kind === "circle" &&
      isNear(a.radius, b.radius) &&
      isShiftedPoint(a.centre, b.centre, shift)
    );
  return (
    a.vertices.length === b.vertices.length &&
    a.vertices.every((corner, index) => {
      const other = b.vertices[index];
      return (
        other !== undefined &&
        isNear(corner.bulge, other.bulge) &&
        isShiftedPoint(corner, other, shift)
      );
    })
  );
};

const isShiftedPoint = (a: Point, b: Point, shift: Shift): boolean =>
  isNear(a.x + shift.x, b.x) && isNear(a.y + shift.y, b.y);

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= SHIFT_NOISE;
