// Bézier curves as arcs: pairs of arcs that keep the curve's direction at both ends and run smoothly into one another.
// A pair that strays from the curve by more than the tolerance is split in the middle of the curve's parameter.

import { tangentBulge } from "./arc.ts";
import { type Point, point, type Vertex, vertex } from "./contour.ts";
import { distanceToEdge } from "./edge-distance.ts";
import { type Edge, edgeBetween } from "./edges.ts";
import { midpoint, pointDistance } from "./point.ts";
import { samePlace } from "./tolerance.ts";
import type { Direction } from "./trigonometry.ts";

/** The curve's arcs as vertices from `start`; the end is left to what follows. */
export function quadraticArcs(
  start: Point,
  control: Point,
  end: Point,
  tolerance: number,
): Vertex[] {
  const twoThirds = (from: Point): Point =>
    point(from.x + ((control.x - from.x) * 2) / 3, from.y + ((control.y - from.y) * 2) / 3);
  const curve = { start, first: twoThirds(start), second: twoThirds(end), end };
  return arcsOf(curve, tolerance, 0);
}

/** The curve's arcs as vertices from `start`; the end is left to what follows. */
export function cubicArcs(
  start: Point,
  first: Point,
  second: Point,
  end: Point,
  tolerance: number,
): Vertex[] {
  return arcsOf({ start, first, second, end }, tolerance, 0);
}

interface Cubic {
  readonly start: Point;
  readonly first: Point;
  readonly second: Point;
  readonly end: Point;
}

/** 2^12 pieces of one curve: a letter's curve is then cut finer than the grid it was drawn on. */
const deepest = 12;

/** Arcs that turn further than this (in bulge: 106 degrees) are split whatever their fit. */
const widestBulge = 0.5;

/** The fit is tried at this many places; what lies between them strays by less than the margin kept for it. */
const trials = 12;
const trialMargin = 0.9;

const arcsOf = (curve: Cubic, tolerance: number, depth: number): Vertex[] => {
  if (isTiny(curve)) return [];
  const arcs = biarcOf(curve);
  if (arcs !== null && isNear(curve, arcs, tolerance * trialMargin)) return arcs;
  if (depth >= deepest) return [vertex(curve.start.x, curve.start.y)];
  const [before, after] = halves(curve);
  return [...arcsOf(before, tolerance, depth + 1), ...arcsOf(after, tolerance, depth + 1)];
};

const isTiny = ({ start, first, second, end }: Cubic): boolean =>
  pointDistance(start, first) <= samePlace &&
  pointDistance(start, second) <= samePlace &&
  pointDistance(start, end) <= samePlace;

/**
 * Both tangents reach the joint equally far: |end - start - d (t0 + t1)| = 2 d, solved for d in the form that does
 * not cancel when the tangents are parallel.
 */
const biarcOf = (curve: Cubic): Vertex[] | null => {
  const { start, end } = curve;
  const leaving = directionOf(start, [curve.first, curve.second, end]);
  const arriving = directionOf(end, [curve.second, curve.first, start]);
  if (leaving === null || arriving === null) return null;
  const chordX = end.x - start.x;
  const chordY = end.y - start.y;
  const sumX = leaving.x - arriving.x;
  const sumY = leaving.y - arriving.y;
  const ahead = chordX * sumX + chordY * sumY;
  const bend = 2 * (1 + leaving.x * arriving.x + leaving.y * arriving.y);
  const square = chordX * chordX + chordY * chordY;
  const reach = square / (ahead + Math.sqrt(ahead * ahead + bend * square));
  if (!(ahead > 0)) return null;
  const joint = point(
    (start.x + end.x + reach * (leaving.x + arriving.x)) / 2,
    (start.y + end.y + reach * (leaving.y + arriving.y)) / 2,
  );
  const first = tangentBulge(start, joint, leaving);
  const second = -tangentBulge(end, joint, arriving);
  if (Math.abs(first) > widestBulge || Math.abs(second) > widestBulge) return null;
  if (first === 0 && second === 0) return [vertex(start.x, start.y)];
  return [vertex(start.x, start.y, first), vertex(joint.x, joint.y, second === 0 ? 0 : second)];
};

/** Unit vector toward the first of the points that lies apart from `from`. */
const directionOf = (from: Point, toward: readonly Point[]): Direction | null => {
  for (const to of toward) {
    const length = pointDistance(from, to);
    if (length > samePlace) return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  }
  return null;
};

const isNear = (curve: Cubic, arcs: readonly Vertex[], tolerance: number): boolean => {
  const edges: Edge[] = arcs.map((from, index) =>
    edgeBetween(from, arcs[index + 1] ?? curve.end, from.bulge),
  );
  for (let trial = 1; trial < trials; trial += 1) {
    const at = pointAt(curve, trial / trials);
    if (edges.every((edge) => distanceToEdge(edge, at.x, at.y) > tolerance)) return false;
  }
  return true;
};

const pointAt = ({ start, first, second, end }: Cubic, t: number): Point => {
  const rest = 1 - t;
  const a = rest * rest * rest;
  const b = 3 * rest * rest * t;
  const c = 3 * rest * t * t;
  const d = t * t * t;
  return point(
    a * start.x + b * first.x + c * second.x + d * end.x,
    a * start.y + b * first.y + c * second.y + d * end.y,
  );
};

/** De Casteljau's halves. */
const halves = ({ start, first, second, end }: Cubic): readonly [Cubic, Cubic] => {
  const early = midpoint(start, first);
  const late = midpoint(second, end);
  const top = midpoint(first, second);
  const beforeMiddle = midpoint(early, top);
  const afterMiddle = midpoint(top, late);
  const middle = midpoint(beforeMiddle, afterMiddle);
  return [
    { start, first: early, second: beforeMiddle, end: middle },
    { start: middle, first: afterMiddle, second: late, end },
  ];
};
