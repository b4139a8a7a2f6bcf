// What stops light: bodies between two heights, films of paint on a face, painted edges. A way of light is a straight line
// in space; where it runs through a blocker's heights its shadow in plan is held against the blocker's outlines, exactly.

import type { Contour, Region } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { samePlace } from "../geometry/tolerance.ts";
import {
  crossesOutline,
  isInOutline,
  meetsBox,
  type OutlineEdges,
  outlineEdges,
  type Stretch,
} from "./outline-edges.ts";

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

interface FlatRegion {
  readonly outline: OutlineEdges;
  readonly holes: readonly OutlineEdges[];
}

interface BlockerCommon {
  /** Component, layer or printed part. */
  readonly owner: string;
  readonly low: number;
  readonly high: number;
  readonly box: Extent;
}

/**
 * `body`: opaque between two heights. `film`: paint on a face. `skin`: paint on edges and on the walls of holes, which
 * light runs along on either side and does not pass.
 */
export type Blocker =
  | (BlockerCommon & {
      readonly kind: "body" | "film";
      readonly regions: () => readonly FlatRegion[];
    })
  | (BlockerCommon & { readonly kind: "skin"; readonly contours: () => readonly OutlineEdges[] });

interface Heights {
  readonly low: number;
  readonly high: number;
}

export const bodyBlocker = (
  owner: string,
  { low, high }: Heights,
  regions: readonly Region[],
): Blocker => ({
  kind: "body",
  owner,
  low,
  high,
  regions: onceAsked(() => regions.map(flatRegion)),
  box: boxOf(regions.map(({ outline }) => outline)),
});

export const filmBlocker = (owner: string, z: number, regions: readonly Region[]): Blocker => ({
  kind: "film",
  owner,
  low: z,
  high: z,
  regions: onceAsked(() => regions.map(flatRegion)),
  box: boxOf(regions.map(({ outline }) => outline)),
});

export const skinBlocker = (
  owner: string,
  { low, high }: Heights,
  contours: readonly Contour[],
): Blocker => ({
  kind: "skin",
  owner,
  low,
  high,
  contours: onceAsked(() => contours.map(outlineEdges)),
  box: boxOf(contours),
});

/** Most of what could stop light is never asked: its box says that no way comes near it. */
const onceAsked = <Made>(make: () => Made): (() => Made) => {
  let made: Made | null = null;
  return () => (made ??= make());
};

const flatRegion = ({ outline, holes }: Region): FlatRegion => ({
  outline: outlineEdges(outline),
  holes: holes.map(outlineEdges),
});

const boxOf = (contours: readonly Contour[]): Extent =>
  contours.map(contourExtent).reduce(joinedExtent);

/** Asks whether the straight way from one place to another is free of all blockers. */
export type FreeWay = (from: Place, to: Place) => boolean;

/** Neighbouring ways mostly end on one blocker: whatever stopped the last one is asked first. */
export const freeWay = (blockers: readonly Blocker[]): FreeWay => {
  const order = [...blockers];
  return (from, to) => {
    for (let index = 0; index < order.length; index += 1) {
      const blocker = order[index]!;
      if (!blocks(blocker, from, to)) continue;
      order[index] = order[0]!;
      order[0] = blocker;
      return false;
    }
    return true;
  };
};

/** What may stop a way between a place and a box, whose heights it does not leave. */
export const blockersToward = (
  from: Place,
  box: Extent,
  heights: Heights,
  blockers: readonly Blocker[],
): readonly Blocker[] => {
  const zone = joinedExtent(extent(from.x, from.y, from.x, from.y), box);
  const low = Math.min(from.z, heights.low);
  const high = Math.max(from.z, heights.high);
  return blockers.filter(
    (one) =>
      one.low <= high &&
      one.high >= low &&
      one.box.minX <= zone.maxX &&
      one.box.maxX >= zone.minX &&
      one.box.minY <= zone.maxY &&
      one.box.maxY >= zone.minY,
  );
};

const blocks = (blocker: Blocker, from: Place, to: Place): boolean => {
  const part = partWithin(blocker, from, to);
  if (part === null || !meetsBox(part, blocker.box)) return false;
  switch (blocker.kind) {
    case "body":
      return blocker.regions().some((region) => meetsRegion(part, region));
    case "film":
      return blocker.regions().some((region) => isIn(part.fromX, part.fromY, region));
    case "skin":
      return blocker.contours().some((contour) => crossesOutline(part, contour));
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

const meetsRegion = (part: Stretch, region: FlatRegion): boolean =>
  meetsBox(part, region.outline.box) &&
  (isIn(part.fromX, part.fromY, region) ||
    crossesOutline(part, region.outline) ||
    region.holes.some((hole) => crossesOutline(part, hole)));

const isIn = (x: number, y: number, { outline, holes }: FlatRegion): boolean =>
  isInOutline(x, y, outline) && !holes.some((hole) => isInOutline(x, y, hole));
