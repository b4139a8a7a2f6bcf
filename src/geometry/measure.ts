// Area, length, bounding box and centroid of lines and arcs, exact: nothing is flattened.
// Signed area: positive for a circle and for a loop that runs counter-clockwise.

import {
  type Contour,
  type Loop,
  loop,
  type Path,
  type Point,
  point,
  type Region,
  type Vertex,
  vertex,
} from "./contour.ts";
import { edgeExtent } from "./edge.ts";
import { type ArcEdge, type Edge, edgesOf } from "./edges.ts";
import { type Extent, extent, joinedExtent } from "./extent.ts";
import { invariant } from "./invariant.ts";
import { type Mm, mm, type SquareMm, squareMm } from "./quantity.ts";
import { arcTangent, sine } from "./trigonometry.ts";

export const contourArea = (contour: Contour): SquareMm => {
  if (contour.kind === "circle") return squareMm(Math.PI * contour.radius * contour.radius);
  const corners = contour.vertices;
  const origin = corners[0];
  if (origin === undefined) return squareMm(0);
  let area = 0;
  // By index, without an iterator: areas are asked for thousands of times in a panel.
  for (let index = 0; index < corners.length; index += 1) {
    const from = corners[index]!;
    const to = corners[(index + 1) % corners.length]!;
    area += triangleArea(origin, from, to) + segmentArea(from, to);
  }
  return squareMm(area);
};

/** Area of the outline less its holes, whichever way they run. */
export const regionArea = (region: Region): SquareMm => {
  let area = Math.abs(contourArea(region.outline));
  for (const hole of region.holes) area -= Math.abs(contourArea(hole));
  return squareMm(area);
};

export const contourLength = (contour: Contour): Mm => lengthOf(edgesOf(contour));

export const pathLength = (path: Path): Mm => lengthOf(edgesOf(path));

export const contourExtent = (contour: Contour): Extent => {
  if (contour.kind === "circle") {
    const { centre, radius } = contour;
    return extent(centre.x - radius, centre.y - radius, centre.x + radius, centre.y + radius);
  }
  return extentOf(contour);
};

export const pathExtent = (path: Path): Extent => extentOf(path);

/** Centre of area. */
export const contourCentroid = (contour: Contour): Point => {
  if (contour.kind === "circle") return contour.centre;
  const origin = contour.vertices[0];
  invariant(origin !== undefined, "a loop has vertices");
  let area = 0;
  let momentX = 0;
  let momentY = 0;
  for (const edge of edgesOf(contour)) {
    const triangle = triangleArea(origin, edge.from, edge.to);
    area += triangle;
    momentX += (triangle * (edge.from.x - origin.x + edge.to.x - origin.x)) / 3;
    momentY += (triangle * (edge.from.y - origin.y + edge.to.y - origin.y)) / 3;
    if (edge.kind === "line") continue;
    const segment = segmentMoment(edge, origin);
    area += segment.area;
    momentX += segment.momentX;
    momentY += segment.momentY;
  }
  invariant(area !== 0, "a contour with a centroid has area");
  return point(origin.x + momentX / area, origin.y + momentY / area);
};

/** The same loop run the other way. */
export const reversedContour = (shape: Loop): Loop => {
  const corners = shape.vertices;
  const last = corners.length - 1;
  return loop(
    corners.map((_, index) => {
      const here = corners[last - index]!;
      const before = corners[(2 * last - index) % corners.length]!;
      return vertex(here.x, here.y, before.bulge === 0 ? 0 : -before.bulge);
    }),
  );
};

const extentOf = (shape: Contour | Path): Extent => {
  const known = keptExtents.get(shape);
  if (known !== undefined) return known;
  const boxes = edgesOf(shape).map(edgeExtent);
  invariant(boxes.length > 0, "a shape with an extent has edges");
  const box = boxes.reduce(joinedExtent);
  keptExtents.set(shape, box);
  return box;
};

const keptExtents = new WeakMap<Contour | Path, Extent>();

const lengthOf = (edges: readonly Edge[]): Mm => {
  let length = 0;
  for (const edge of edges) {
    const dx = edge.to.x - edge.from.x;
    const dy = edge.to.y - edge.from.y;
    length += edge.kind === "arc" ? edge.radius * edge.sweep : Math.sqrt(dx * dx + dy * dy);
  }
  return mm(length);
};

/** Measured from a corner of the shape, so that a shape far from the origin loses nothing. */
const triangleArea = (origin: Point, from: Point, to: Point): number =>
  ((from.x - origin.x) * (to.y - origin.y) - (to.x - origin.x) * (from.y - origin.y)) / 2;

/**
 * Signed area between an arc and its chord, from bulge b and chord c:
 * c² ((1 + b²)² atan b - b (1 - b²)) / 8 b². For flat arcs the terms cancel, and the series
 * c² sum (-1)^n b^(2n-1) / ((2n+1)(2n-1)(2n-3)) takes over.
 */
const segmentArea = (from: Vertex, to: Point): number => {
  const bulge = from.bulge;
  if (bulge === 0) return 0;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const chordSquared = dx * dx + dy * dy;
  const square = bulge * bulge;
  if (square < flatBulgeSquared) {
    let sum = 0;
    for (const factor of segmentFactors) sum = factor + square * sum;
    return chordSquared * bulge * sum;
  }
  const bracket = (1 + square) * (1 + square) * arcTangent(bulge) - bulge * (1 - square);
  return (chordSquared * bracket) / (8 * square);
};

/** Bulges below 1/4, where the series needs eleven terms. */
const flatBulgeSquared = 1 / 16;

/** Factors of the series, the smallest first. */
const segmentFactors: readonly number[] = Array.from({ length: 11 }, (_, index) => {
  const n = 11 - index;
  return (n % 2 === 0 ? 1 : -1) / ((2 * n + 1) * (2 * n - 1) * (2 * n - 3));
});

/**
 * Area and first moments of the segment between an arc and its chord, about `origin`. About the arc's own
 * centre the moment is chord³ / 12 towards the bow, whatever the radius.
 */
const segmentMoment = (
  arc: ArcEdge,
  origin: Point,
): { readonly area: number; readonly momentX: number; readonly momentY: number } => {
  const dx = arc.to.x - arc.from.x;
  const dy = arc.to.y - arc.from.y;
  const chordSquared = dx * dx + dy * dy;
  const turn = arc.turnsLeft ? 1 : -1;
  const area = (turn * arc.radius * arc.radius * (arc.sweep - sine(arc.sweep))) / 2;
  return {
    area,
    momentX: area * (arc.centre.x - origin.x) + (chordSquared * dy) / 12,
    momentY: area * (arc.centre.y - origin.y) - (chordSquared * dx) / 12,
  };
};
