// Is a point, or a whole contour, inside a contour? Exact for arcs: nothing is flattened.
// On the boundary itself containsPoint may say either; ask pointToContour where touching matters.

import { boxedEdgesOf } from "./boxed-edges.ts";
import type { Contour, Point } from "./contour.ts";
import { type ArcEdge, type Edge, edgesOf } from "./edges.ts";
import { contourExtent } from "./measure.ts";
import { isOnBoundary, pieceMiddles } from "./pieces.ts";
import { pointDistance } from "./point.ts";
import { samePlace } from "./tolerance.ts";

export const containsPoint = (contour: Contour, at: Point): boolean => {
  if (contour.kind === "circle") return isInCircle(contour.centre, contour.radius, at);
  const box = contourExtent(contour);
  if (at.x < box.minX || at.x > box.maxX || at.y < box.minY || at.y > box.maxY) return false;
  let inside = false;
  for (const edge of edgesOf(contour)) {
    if (isLeftOfChord(edge, at)) inside = !inside;
    if (edge.kind === "arc" && isInBow(edge, at)) inside = !inside;
  }
  return inside;
};

/** No part of `inner` lies outside `outer`; it may touch it from within. */
export const containsContour = (outer: Contour, inner: Contour): boolean => {
  if (outer.kind === "circle" && inner.kind === "circle")
    return pointDistance(outer.centre, inner.centre) + inner.radius <= outer.radius + samePlace;
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

const isInCircle = (centre: Point, radius: number, at: Point): boolean => {
  const dx = at.x - centre.x;
  const dy = at.y - centre.y;
  return dx * dx + dy * dy < radius * radius;
};

/** The ray from the point to +x crosses the edge's chord. */
const isLeftOfChord = ({ from, to }: Edge, at: Point): boolean => {
  if (from.y > at.y === to.y > at.y) return false;
  const side = (to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x);
  return to.y > from.y ? side > 0 : side < 0;
};

/**
 * Between the arc and its chord. A point on the chord's own line is taken as moved a hair to +x, and a smaller
 * hair to +y, just as the ray's test takes it, so that chord and bow never both claim it.
 */
const isInBow = (arc: ArcEdge, at: Point): boolean => {
  if (!isInCircle(arc.centre, arc.radius, at)) return false;
  const dx = arc.to.x - arc.from.x;
  const dy = arc.to.y - arc.from.y;
  const side = dx * (at.y - arc.from.y) - dy * (at.x - arc.from.x);
  const settled = side === 0 ? (dy === 0 ? dx : -dy) : side;
  return arc.turnsLeft ? settled < 0 : settled > 0;
};
