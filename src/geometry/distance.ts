// The gap between two outlines, an outline and a stroke, or a point and an outline: exact for lines and arcs.
// A gap is between boundaries: a hole well inside a panel has a gap to the panel's outline too.

import { type BoxedEdge, boxedEdgesOf } from "./boxed-edges.ts";
import { containsPoint } from "./containment.ts";
import { type Circle, type Contour, type Path, type Point, point } from "./contour.ts";
import { headingAt, pointAlong } from "./edge.ts";
import { apartGap, edgeGap, type Gap, gapFromPoint } from "./edge-distance.ts";
import { edgesOf } from "./edges.ts";
import { extentGap, extentsOverlap } from "./extent.ts";
import { contourArea, contourExtent } from "./measure.ts";
import { isOnBoundary, pieceMiddles } from "./pieces.ts";
import { pointDistance } from "./point.ts";
import { mm } from "./quantity.ts";
import { samePlace } from "./tolerance.ts";

export interface ContourDistance extends Gap {
  /** The areas share more than a touch: they cross, or one lies in the other. */
  readonly overlaps: boolean;
}

/** `from` lies on `a`, `to` on `b`; 0 where the boundaries touch or cross. */
export const contourDistance = (a: Contour, b: Contour): ContourDistance => {
  if (a.kind === "circle" && b.kind === "circle") return circleDistance(a, b);
  const gap = leastGap(boxedEdgesOf(a), boxedEdgesOf(b));
  return { ...gap, overlaps: areasOverlap(a, b, gap) };
};

/** `from` lies on the contour, `to` on the stroke's centre line. */
export const contourToPathDistance = (contour: Contour, stroke: Path): ContourDistance => {
  const gap = leastGap(boxedEdgesOf(contour), boxedEdgesOf(stroke));
  const start = stroke.vertices[0]!;
  const overlaps =
    gap.gap > samePlace
      ? containsPoint(contour, start)
      : boxedEdgesOf(stroke).some((boxed) => hasPieceInside(boxed, contour));
  return { ...gap, overlaps };
};

/** Distance from a point to an outline, inside or out: `from` is the point, `to` on the outline. */
export const pointToContour = (from: Point, contour: Contour): Gap => {
  if (contour.kind === "circle") return pointToCircle(from, contour);
  let best: Gap | null = null;
  const spot = { minX: from.x, minY: from.y, maxX: from.x, maxY: from.y };
  for (const { edge, box } of boxedEdgesOf(contour)) {
    if (best !== null && extentGap(spot, box) >= best.gap) continue;
    const gap = gapFromPoint(from, edge);
    if (best === null || gap.gap < best.gap) best = gap;
  }
  return best!;
};

/** The areas share more than a touch. Quicker than the distance where the boxes are apart. */
export const contoursOverlap = (a: Contour, b: Contour): boolean =>
  extentsOverlap(contourExtent(a), contourExtent(b)) && contourDistance(a, b).overlaps;

const pointToCircle = (from: Point, { centre, radius }: Circle): Gap => {
  const dx = from.x - centre.x;
  const dy = from.y - centre.y;
  const away = Math.sqrt(dx * dx + dy * dy);
  const to =
    away === 0
      ? point(centre.x + radius, centre.y)
      : point(centre.x + (dx / away) * radius, centre.y + (dy / away) * radius);
  return { gap: mm(Math.abs(away - radius)), from, to };
};

const circleDistance = (a: Circle, b: Circle): ContourDistance => {
  const apart = pointDistance(a.centre, b.centre);
  const overlaps = apart < a.radius + b.radius - samePlace;
  const towardX = apart === 0 ? 1 : (b.centre.x - a.centre.x) / apart;
  const towardY = apart === 0 ? 0 : (b.centre.y - a.centre.y) / apart;
  const on = (of: Circle, side: number): Point =>
    point(of.centre.x + side * of.radius * towardX, of.centre.y + side * of.radius * towardY);
  if (apart >= a.radius + b.radius)
    return { gap: mm(apart - a.radius - b.radius), from: on(a, 1), to: on(b, -1), overlaps };
  if (apart + b.radius <= a.radius)
    return { gap: mm(a.radius - b.radius - apart), from: on(a, 1), to: on(b, 1), overlaps };
  if (apart + a.radius <= b.radius)
    return { gap: mm(b.radius - a.radius - apart), from: on(a, -1), to: on(b, -1), overlaps };
  const gap = leastGap(boxedEdgesOf(a), boxedEdgesOf(b));
  return { ...gap, overlaps };
};

const leastGap = (a: readonly BoxedEdge[], b: readonly BoxedEdge[]): Gap => {
  let best = firstGap(a, b);
  for (const one of a) {
    for (const other of b) {
      const boxes = extentGap(one.box, other.box);
      if (boxes >= best.gap) continue;
      const gap = (boxes > samePlace ? apartGap : edgeGap)(one.edge, other.edge);
      if (gap.gap < best.gap) best = gap;
    }
  }
  return best;
};

/** The gap of the pair whose boxes are nearest: most others are then passed over by their boxes alone. */
const firstGap = (a: readonly BoxedEdge[], b: readonly BoxedEdge[]): Gap => {
  let nearest = Number.POSITIVE_INFINITY;
  let one = a[0]!;
  let other = b[0]!;
  for (const first of a) {
    for (const second of b) {
      const gap = extentGap(first.box, second.box);
      if (gap >= nearest) continue;
      nearest = gap;
      one = first;
      other = second;
    }
  }
  return edgeGap(one.edge, other.edge);
};

/** Some pair of edges comes within `samePlace`: quicker than the gap itself. */
export const boundariesTouch = (a: Contour, b: Contour): boolean =>
  boxedEdgesOf(a).some((one) =>
    boxedEdgesOf(b).some(
      (other) =>
        extentGap(one.box, other.box) <= samePlace &&
        edgeGap(one.edge, other.edge).gap <= samePlace,
    ),
  );

const areasOverlap = (a: Contour, b: Contour, gap: Gap): boolean => {
  if (!extentsOverlap(contourExtent(a), contourExtent(b))) return false;
  if (gap.gap > samePlace)
    return containsPoint(a, edgesOf(b)[0]!.from) || containsPoint(b, edgesOf(a)[0]!.from);
  return (
    boxedEdgesOf(a).some((boxed) => hasPieceInside(boxed, b)) ||
    boxedEdgesOf(b).some((boxed) => hasPieceInside(boxed, a)) ||
    isAlong(a, b)
  );
};

/** Some piece of the edge runs inside the contour, not along its boundary. */
const hasPieceInside = (boxed: BoxedEdge, contour: Contour): boolean =>
  pieceMiddles(boxed, contour).some(
    (at) => containsPoint(contour, at) && !isOnBoundary(contour, at),
  );

/** Outlines that only run along one another: they overlap where both have their material on the same side. */
const isAlong = (a: Contour, b: Contour): boolean => {
  const edge = edgesOf(a)[0]!;
  const middle = pointAlong(edge, 1 / 2);
  if (!isOnBoundary(b, middle)) return false;
  const inward = inwardFrom(a, middle);
  return containsPoint(b, inward);
};

/** A point of the area just beside a place in the middle of the contour's first edge. */
const inwardFrom = (contour: Contour, middle: Point): Point => {
  const edge = edgesOf(contour)[0]!;
  const step = 4 * samePlace * (contourArea(contour) < 0 ? -1 : 1);
  if (edge.kind === "arc") {
    const toward = (edge.turnsLeft ? step : -step) / edge.radius;
    return point(
      middle.x + (edge.centre.x - middle.x) * toward,
      middle.y + (edge.centre.y - middle.y) * toward,
    );
  }
  const heading = headingAt(edge, "from");
  return point(middle.x - heading.y * step, middle.y + heading.x * step);
};
