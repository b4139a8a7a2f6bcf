// One line or arc: its bounding box, a point along it, its direction at a place, and whether a place near it is on it.

import { type Point, point } from "./contour.ts";
import type { ArcEdge, Edge } from "./edges.ts";
import { type Extent, extent } from "./extent.ts";
import { pointDistance } from "./point.ts";
import { type Radians, radians } from "./quantity.ts";
import { arcTangent2, cosine, type Direction, sine } from "./trigonometry.ts";

/** Bounding box of one edge. */
export const edgeExtent = (edge: Edge): Extent => {
  const chord = extent(
    Math.min(edge.from.x, edge.to.x),
    Math.min(edge.from.y, edge.to.y),
    Math.max(edge.from.x, edge.to.x),
    Math.max(edge.from.y, edge.to.y),
  );
  return edge.kind === "line" ? chord : withBows(chord, edge);
};

/** True where a point of the arc's circle lies on the arc: on the bow's side of its chord. */
export const isBesideBow = (arc: ArcEdge, x: number, y: number): boolean => {
  const side =
    (arc.to.x - arc.from.x) * (y - arc.from.y) - (arc.to.y - arc.from.y) * (x - arc.from.x);
  return arc.turnsLeft ? side <= 0 : side >= 0;
};

const withBows = (chord: Extent, arc: ArcEdge): Extent => {
  const { centre, radius } = arc;
  const left = isBesideBow(arc, centre.x - radius, centre.y);
  const right = isBesideBow(arc, centre.x + radius, centre.y);
  const low = isBesideBow(arc, centre.x, centre.y - radius);
  const high = isBesideBow(arc, centre.x, centre.y + radius);
  return extent(
    left ? Math.min(chord.minX, centre.x - radius) : chord.minX,
    low ? Math.min(chord.minY, centre.y - radius) : chord.minY,
    right ? Math.max(chord.maxX, centre.x + radius) : chord.maxX,
    high ? Math.max(chord.maxY, centre.y + radius) : chord.maxY,
  );
};

/** The point at `fraction` (0 .. 1) of the edge's length. */
export const pointAlong = (edge: Edge, fraction: number): Point => {
  const { from, to } = edge;
  if (edge.kind === "line")
    return point(from.x + (to.x - from.x) * fraction, from.y + (to.y - from.y) * fraction);
  const angle = radians((edge.turnsLeft ? edge.sweep : -edge.sweep) * fraction);
  const across = sine(angle);
  const ahead = cosine(angle);
  const x = from.x - edge.centre.x;
  const y = from.y - edge.centre.y;
  return point(edge.centre.x + x * ahead - y * across, edge.centre.y + x * across + y * ahead);
};

/** How far along the edge (0 .. 1 of its length) a place on it lies. */
export const fractionAlong = (edge: Edge, at: Point): number => {
  const { from, to } = edge;
  if (edge.kind === "line") {
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    return ((at.x - from.x) * dx + (at.y - from.y) * dy) / (dx * dx + dy * dy);
  }
  return turnTo(edge, at) / edge.sweep;
};

/** Unit vector along the edge at one of its ends. */
export const headingAt = (edge: Edge, end: "from" | "to"): Direction => {
  if (edge.kind === "line") {
    const length = pointDistance(edge.from, edge.to);
    return { x: (edge.to.x - edge.from.x) / length, y: (edge.to.y - edge.from.y) / length };
  }
  const at = end === "from" ? edge.from : edge.to;
  const turn = edge.turnsLeft ? edge.radius : -edge.radius;
  return { x: -(at.y - edge.centre.y) / turn, y: (at.x - edge.centre.x) / turn };
};

/** Angle from the arc's start to a place on its circle, the way that the arc turns, in -pi .. pi round its middle. */
const turnTo = (arc: ArcEdge, at: Point): Radians => {
  const middle = pointAlong(arc, 1 / 2);
  const middleX = middle.x - arc.centre.x;
  const middleY = middle.y - arc.centre.y;
  const x = at.x - arc.centre.x;
  const y = at.y - arc.centre.y;
  const angle = arcTangent2(middleX * y - middleY * x, middleX * x + middleY * y);
  return radians(arc.sweep / 2 + (arc.turnsLeft ? angle : -angle));
};
