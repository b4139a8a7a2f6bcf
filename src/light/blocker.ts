// What stops light: bodies between two heights, films of paint on a face, painted edges. A way of light is a straight line
// in space; where it runs through a blocker's heights its shadow in plan is held against the blocker's outlines, exactly.

import { containsPoint } from "../geometry/containment.ts";
import { type Contour, point, type Region } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { crossesOutline, outlineEdges, type Stretch } from "./outline-edges.ts";

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export type Blocker =
  | {
      /** Opaque between two heights. */
      readonly kind: "body";
      /** Component, layer or printed part. */
      readonly owner: string;
      readonly low: number;
      readonly high: number;
      readonly regions: readonly Region[];
      readonly box: Extent;
    }
  | {
      /** Paint on a face. */
      readonly kind: "film";
      readonly owner: string;
      readonly low: number;
      readonly high: number;
      readonly regions: readonly Region[];
      readonly box: Extent;
    }
  | {
      /** Paint on edges and on the walls of holes: light passes on either side of it, not through it. */
      readonly kind: "skin";
      readonly owner: string;
      readonly low: number;
      readonly high: number;
      readonly contours: readonly Contour[];
      readonly box: Extent;
    };

export const bodyBlocker = (
  owner: string,
  heights: { readonly low: number; readonly high: number },
  regions: readonly Region[],
): Blocker => ({ kind: "body", owner, ...heights, regions, box: boxOf(regions.map(outlineOf)) });

export const filmBlocker = (owner: string, z: number, regions: readonly Region[]): Blocker => ({
  kind: "film",
  owner,
  low: z,
  high: z,
  regions,
  box: boxOf(regions.map(outlineOf)),
});

export const skinBlocker = (
  owner: string,
  heights: { readonly low: number; readonly high: number },
  contours: readonly Contour[],
): Blocker => ({ kind: "skin", owner, ...heights, contours, box: boxOf(contours) });

const outlineOf = ({ outline }: Region): Contour => outline;

const boxOf = (contours: readonly Contour[]): Extent =>
  contours.map(contourExtent).reduce(joinedExtent);

/** The first blocker, in the order given, that the straight way from one place to another meets; null where it is free. */
export const blockerBetween = (
  from: Place,
  to: Place,
  blockers: readonly Blocker[],
): Blocker | null => {
  for (const blocker of blockers) if (blocks(blocker, from, to)) return blocker;
  return null;
};

const blocks = (blocker: Blocker, from: Place, to: Place): boolean => {
  const part = partWithin(blocker, from, to);
  if (part === null) return false;
  if (misses(part, blocker.box)) return false;
  switch (blocker.kind) {
    case "body":
      return blocker.regions.some((region) => meetsRegion(part, region));
    case "film":
      return blocker.regions.some((region) => isIn(part.fromX, part.fromY, region));
    case "skin":
      return blocker.contours.some((contour) => crossesOutline(part, outlineEdges(contour)));
  }
};

/** The part of the way between the blocker's heights, in plan. Faces that it only touches are no part. */
const partWithin = ({ kind, low, high }: Blocker, from: Place, to: Place): Stretch | null => {
  const rise = to.z - from.z;
  const inset = kind === "film" ? 0 : samePlace;
  const [bottom, top] = [low + inset, high - inset];
  if (Math.abs(rise) <= samePlace)
    return from.z < bottom || from.z > top || kind === "film" ? null : between(from, to, 0, 1);
  const a = (bottom - from.z) / rise;
  const b = (top - from.z) / rise;
  const start = Math.max(0, Math.min(a, b));
  const end = Math.min(1, Math.max(a, b));
  return start > end ? null : between(from, to, start, end);
};

const between = (from: Place, to: Place, start: number, end: number): Stretch => {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  return {
    fromX: from.x + start * dx,
    fromY: from.y + start * dy,
    toX: from.x + end * dx,
    toY: from.y + end * dy,
  };
};

const misses = ({ fromX, fromY, toX, toY }: Stretch, box: Extent): boolean =>
  Math.max(fromX, toX) < box.minX ||
  Math.min(fromX, toX) > box.maxX ||
  Math.max(fromY, toY) < box.minY ||
  Math.min(fromY, toY) > box.maxY;

const meetsRegion = (part: Stretch, region: Region): boolean =>
  !misses(part, contourExtent(region.outline)) &&
  (crossesOutline(part, outlineEdges(region.outline)) ||
    region.holes.some((hole) => crossesOutline(part, outlineEdges(hole))) ||
    isIn(part.fromX, part.fromY, region));

const isIn = (x: number, y: number, { outline, holes }: Region): boolean => {
  const at = point(x, y);
  return containsPoint(outline, at) && !holes.some((hole) => containsPoint(hole, at));
};
