// Contours as polygons for a mesher: corners on the mesh grid, counter-clockwise. Beside a curve that something must
// clear, facets are circumscribed (a circle's corners lie at r / cos(pi / n)); beside any other they keep the area.

import { type Contour, type Loop, type Point, point } from "../contour.ts";
import { pointAlong } from "../edge.ts";
import { type ArcEdge, type Edge, edgesOf } from "../edges.ts";
import { invariant } from "../invariant.ts";
import { contourArea, contourLength, reversedContour } from "../measure.ts";
import { degrees, type Mm, type Radians, radians } from "../quantity.ts";
import { arcCosine, cosine, direction, sine } from "../trigonometry.ts";
import { chordHeight, clearHeight, meshGrid } from "./solid-tolerance.ts";

/** On which side of the contour something passes, if on any. */
export type ClearSide = "inside" | "outside" | "none";

/** The polygon, without corners that rounding has made one or that lie on the line between their neighbours. */
export const facets = (contour: Contour, clear: ClearSide): readonly Point[] => {
  const corners = cornersOnGrid(contour, clear);
  invariant(corners.length >= LEAST_CORNERS, "a contour is larger than the grid of the mesh");
  return corners;
};

/** Whether `facets` finds a polygon in it, whatever it is to clear: a sliver's arc and its chord may become one line. */
export const hasFacets = (contour: Contour): boolean =>
  isSurelyWide(contour) ||
  CLEAR_SIDES.every((clear) => cornersOnGrid(contour, clear).length >= LEAST_CORNERS);

const LEAST_CORNERS = 3;

const CLEAR_SIDES: readonly ClearSide[] = ["inside", "outside", "none"];

/** Facets and the grid move the boundary by less than two chord heights: of more area than that takes away, some is left. */
const isSurelyWide = (contour: Contour): boolean =>
  Math.abs(contourArea(contour)) > 2 * chordHeight * contourLength(contour);

const cornersOnGrid = (contour: Contour, clear: ClearSide): readonly Point[] => {
  const shape = counterClockwise(contour);
  return withoutIdle(facetCorners(shape, facetCounts(shape, clear), clear).map(onGrid));
};

/** Facets of each edge; a circle has one edge. */
export const facetCounts = (contour: Contour, clear: ClearSide): readonly number[] =>
  contour.kind === "circle"
    ? [turnFacets(contour.radius, clear === "none" ? "exact" : "clear")]
    : edgesOf(contour).map((edge) => arcFacets(edge, clear));

/**
 * Corners in the order of the edges, as many as the counts say, not on the grid yet: sections of a loft stay corner to
 * corner.
 */
export const facetCorners = (
  contour: Contour,
  counts: readonly number[],
  clear: ClearSide,
): readonly Point[] =>
  contour.kind === "circle"
    ? circleCorners(contour.centre, contour.radius, { count: counts[0] ?? 0, clear })
    : edgesOf(contour).flatMap((edge, index) => edgeCorners(edge, counts[index] ?? 1, clear));

/** Facets of a whole turn at this radius: a multiple of four, so that a disc's box is its diameter both ways. */
export const turnFacets = (radius: Mm, clearance: "clear" | "exact"): number => {
  const angle = clearance === "clear" ? clearAngle(radius) : chordAngle(radius);
  return Math.max(leastTurn, 4 * Math.ceil((2 * Math.PI) / angle / 4));
};

const leastTurn = 8;

/** What a radius is multiplied by so that the facets of a whole turn clear it. */
export const circumscribed = (count: number): number => 1 / cosine(radians(Math.PI / count));

/** What a radius is multiplied by so that the polygon has the circle's area. */
export const equalArea = (count: number): number =>
  Math.sqrt((2 * Math.PI) / (count * sine(radians((2 * Math.PI) / count))));

export const counterClockwise = (contour: Contour): Contour =>
  contour.kind === "loop" && contourArea(contour) < 0 ? reversedLoop(contour) : contour;

const reversedLoop = (shape: Loop): Loop => reversedContour(shape);

export const onGrid = (at: Point): Point =>
  point(Math.round(at.x / meshGrid) * meshGrid, Math.round(at.y / meshGrid) * meshGrid);

/** Twice the angle whose circumscribed corner lies `clearHeight` beyond the curve. */
const clearAngle = (radius: number): Radians =>
  radians(2 * arcCosine(radius / (radius + clearHeight)));

/** The angle whose chord has `chordHeight`; a quarter turn for circles that are no larger than that. */
const chordAngle = (radius: number): Radians =>
  radians(2 * arcCosine(Math.max(Math.SQRT1_2, 1 - chordHeight / radius)));

const roundingMove = meshGrid * Math.SQRT1_2;

const circleCorners = (
  centre: Point,
  radius: Mm,
  of: { readonly count: number; readonly clear: ClearSide },
): readonly Point[] => {
  // Rounding to the grid moves a corner by up to half a diagonal of a step: a clear circle makes up for it.
  const size =
    of.clear === "inside"
      ? (radius + roundingMove) * circumscribed(of.count)
      : of.clear === "outside"
        ? radius - roundingMove
        : radius * equalArea(of.count);
  return Array.from({ length: of.count }, (_, index) => {
    const { x, y } = direction(degrees((360 * index) / of.count));
    return point(centre.x + size * x, centre.y + size * y);
  });
};

const arcFacets = (edge: Edge, clear: ClearSide): number => {
  if (edge.kind === "line" || edge.radius === 0) return 1;
  const angle = clear === "none" ? chordAngle(edge.radius) : clearAngle(edge.radius);
  return Math.max(1, Math.ceil(edge.sweep / angle));
};

/** The edge's corners but its last, which is the next edge's first. */
const edgeCorners = (edge: Edge, count: number, clear: ClearSide): readonly Point[] =>
  edge.kind === "line" ? evenly(edge, count) : arcCorners(edge, count, clear);

const evenly = (edge: Edge, count: number): readonly Point[] =>
  Array.from({ length: count }, (_, index) =>
    index === 0 ? edge.from : pointAlong(edge, index / count),
  );

/** An arc bows toward what must pass on its left where it turns right, and the other way about. */
const arcCorners = (arc: ArcEdge, count: number, clear: ClearSide): readonly Point[] => {
  if (clear === "none") return evenly(arc, count).map(spread(arc, areaFactor(arc, count)));
  const isRoundSide = (clear === "inside") === arc.turnsLeft;
  return isRoundSide ? tangentCorners(arc, count) : evenly(arc, count);
};

/** The start, then where the tangents of the facets' touching points meet. */
const tangentCorners = (arc: ArcEdge, count: number): readonly Point[] => {
  const outward = spread(arc, 1 / cosine(radians(arc.sweep / count / 2)));
  const meetings = Array.from({ length: count }, (_, index) =>
    outward(pointAlong(arc, (index + 1 / 2) / count), 1),
  );
  return [arc.from, ...meetings];
};

/** Moves every corner but the first away from the arc's centre. */
const spread =
  (arc: ArcEdge, factor: number) =>
  (at: Point, index: number): Point =>
    index === 0
      ? at
      : point(
          arc.centre.x + (at.x - arc.centre.x) * factor,
          arc.centre.y + (at.y - arc.centre.y) * factor,
        );

/**
 * How far the corners between an arc's ends move out so that its facets keep the area: with s the sine of a facet's
 * angle, (n - 2) s k² + 2 s k = sweep. One chord has no corner to move.
 */
const areaFactor = (arc: ArcEdge, count: number): number => {
  if (count === 1) return 1;
  const s = sine(radians(arc.sweep / count));
  const a = (count - 2) * s;
  return arc.sweep / (s + Math.sqrt(s * s + a * arc.sweep));
};

const withoutIdle = (corners: readonly Point[]): readonly Point[] => {
  const apart = corners.filter((at, index) => {
    const before = corners[(index + corners.length - 1) % corners.length]!;
    return at.x !== before.x || at.y !== before.y;
  });
  return apart.filter((at, index) => {
    const before = apart[(index + apart.length - 1) % apart.length]!;
    const after = apart[(index + 1) % apart.length]!;
    return turn(before, at, after) !== 0;
  });
};

/** Exact: the corners are whole steps of the grid. */
const turn = (a: Point, b: Point, c: Point): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
