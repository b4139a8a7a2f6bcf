// Is a point, or a whole contour, inside a contour? Exact for arcs: nothing is flattened.
// On the boundary itself containsPoint may say either; ask pointToContour where touching matters.

import { boxedEdgesOf } from "./boxed-edges.ts";
import type { Circle, Contour, Point, Vertex } from "./contour.ts";
import { edgeBetween } from "./edges.ts";
import { contourExtent } from "./measure.ts";
import { isOnBoundary, pieceMiddles } from "./pieces.ts";
import { pointDistance } from "./point.ts";
import { samePlace } from "./tolerance.ts";

export const containsPoint = (contour: Contour, at: Point): boolean => {
  if (contour.kind === "circle") return isInCircle(contour.centre, contour.radius, at);
  const corners = contour.vertices;
  let inside = false;
  let from = corners.at(-1);
  for (const to of corners) {
    if (from !== undefined && crossesRay(from, to, at)) inside = !inside;
    if (from !== undefined && from.bulge !== 0 && isInBow(from, to, at)) inside = !inside;
    from = to;
  }
  return inside;
};

/** No part of `inner` lies outside `outer`; it may touch it from within. */
export const containsContour = (outer: Contour, inner: Contour): boolean => {
  if (outer.kind === "circle" && inner.kind === "circle") return holdsCircle(outer, inner);
  const outerBox = contourExtent(outer);
  const innerBox = contourExtent(inner);
  const isBoxWithin =
    innerBox.minX >= outerBox.minX - samePlace &&
    innerBox.minY >= outerBox.minY - samePlace &&
    innerBox.maxX <= outerBox.maxX + samePlace &&
    innerBox.maxY <= outerBox.maxY + samePlace;
  if (!isBoxWithin) return false;
  return boxedEdgesOf(inner).every((boxed) =>
    pieceMiddles(boxed, outer).every((at) => containsPoint(outer, at) || isOnBoundary(outer, at)),
  );
};

/** Most of the circles that are asked about lie far from each other, which one coordinate tells. */
const holdsCircle = (outer: Circle, inner: Circle): boolean => {
  const reach = outer.radius + samePlace;
  const dx = inner.centre.x - outer.centre.x;
  if (dx > reach || dx < -reach) return false;
  return pointDistance(outer.centre, inner.centre) + inner.radius <= reach;
};

const isInCircle = (centre: Point, radius: number, at: Point): boolean => {
  const dx = at.x - centre.x;
  const dy = at.y - centre.y;
  return dx * dx + dy * dy < radius * radius;
};

/** The ray from the point to +x crosses the chord. */
const crossesRay = (from: Point, to: Point, at: Point): boolean => {
  if (from.y > at.y === to.y > at.y) return false;
  const side = (to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x);
  return to.y > from.y ? side > 0 : side < 0;
};

/**
 * Between the arc and its chord. A point on the chord's own line is taken as moved a hair to +x, and a smaller
 * hair to +y, just as the ray's test takes it, so that chord and bow never both claim it.
 */
const isInBow = (from: Vertex, to: Point, at: Point): boolean => {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const side = dx * (at.y - from.y) - dy * (at.x - from.x);
  const settled = side === 0 ? (dy === 0 ? dx : -dy) : side;
  if (settled > 0 === from.bulge > 0) return false;
  // Sagitta is chord x bulge / 2: beyond it there is no need to find the circle.
  const chordSquared = dx * dx + dy * dy;
  if (Math.abs(side) > (chordSquared * Math.abs(from.bulge)) / 2) return false;
  const arc = edgeBetween(from, to, from.bulge);
  return arc.kind === "arc" && isInCircle(arc.centre, arc.radius, at);
};
