// Where a straight band of some breadth lies free inside an area, along x or along y: for lanes of strips and for blocks.
// Arcs are taken as chords of a hundredth, and the ends drawn in by as much.

import { containsPoint } from "../../geometry/containment.ts";
import { type Contour, type Point, point, type Region } from "../../geometry/contour.ts";
import { flattened } from "../../geometry/flatten.ts";
import { contourExtent } from "../../geometry/measure.ts";

/** Along the band, and where its middle lies across it. */
export type Way = "x" | "y";

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface BandArea {
  readonly region: Region;
  readonly way: Way;
  readonly edges: readonly (readonly [Point, Point])[];
  /** Across the bands. */
  readonly low: number;
  readonly high: number;
}

const CHORD = 0.01;

export const bandArea = (region: Region, way: Way): BandArea => {
  const box = contourExtent(region.outline);
  return {
    region,
    way,
    edges: [region.outline, ...region.holes].flatMap((contour) => edgesAlong(contour, way)),
    low: way === "x" ? box.minY : box.minX,
    high: way === "x" ? box.maxY : box.maxX,
  };
};

/** Stretches that are free over the whole breadth from `low` to `high`, in order. */
export const freeStretches = (area: BandArea, low: number, high: number): readonly Stretch[] => {
  const blocked = area.edges
    .flatMap(([from, to]) => crossing(from, to, { low, high }))
    .toSorted((a, b) => a.from - b.from);
  const free: Stretch[] = [];
  let reached = Number.NEGATIVE_INFINITY;
  for (const { from, to } of blocked) {
    if (Number.isFinite(reached) && from - reached > 4 * CHORD) {
      const stretch = { from: reached + CHORD, to: from - CHORD };
      if (isInside(area, (stretch.from + stretch.to) / 2, (low + high) / 2)) free.push(stretch);
    }
    reached = Math.max(reached, to);
  }
  return free;
};

/** A place along and across a band, in the panel's own x and y. */
export const placeOn = (way: Way, along: number, across: number): Point =>
  way === "x" ? point(along, across) : point(across, along);

/** Edges with x along the bands and y across them. */
const edgesAlong = (contour: Contour, way: Way): readonly (readonly [Point, Point])[] => {
  const corners = flattened(contour, CHORD).map(({ x, y }) =>
    way === "x" ? point(x, y) : point(y, x),
  );
  return corners.map((from, index) => [from, corners[(index + 1) % corners.length] ?? from]);
};

/** What an edge covers along the band while it is in it. */
const crossing = (
  from: Point,
  to: Point,
  band: { readonly low: number; readonly high: number },
): readonly Stretch[] => {
  const [lower, upper] = from.y <= to.y ? [from, to] : [to, from];
  if (upper.y < band.low || lower.y > band.high) return [];
  const at = (y: number): number =>
    upper.y === lower.y
      ? lower.x
      : lower.x + ((upper.x - lower.x) * (y - lower.y)) / (upper.y - lower.y);
  if (upper.y === lower.y) return [{ from: Math.min(from.x, to.x), to: Math.max(from.x, to.x) }];
  const one = at(Math.max(lower.y, band.low));
  const other = at(Math.min(upper.y, band.high));
  return [{ from: Math.min(one, other), to: Math.max(one, other) }];
};

const isInside = ({ region, way }: BandArea, along: number, across: number): boolean => {
  const at = placeOn(way, along, across);
  return (
    containsPoint(region.outline, at) && region.holes.every((hole) => !containsPoint(hole, at))
  );
};
