// The gap between two edges, or a point and an edge, exactly, with the two points that it lies between.

import { type Point, point } from "./contour.ts";
import { isBesideBow } from "./edge.ts";
import type { ArcEdge, Edge, LineEdge } from "./edges.ts";
import { meetingsOf } from "./meeting.ts";
import { pointDistance } from "./point.ts";
import { type Mm, mm } from "./quantity.ts";
import { arithmeticNoise } from "./tolerance.ts";

export interface Gap {
  readonly gap: Mm;
  readonly from: Point;
  readonly to: Point;
}

/** `from` lies on `a`, `to` on `b`. */
export const edgeGap = (a: Edge, b: Edge): Gap => {
  const meeting = meetingsOf(a, b)[0];
  return meeting === undefined ? apartGap(a, b) : { gap: mm(0), from: meeting, to: meeting };
};

/** The gap between edges that are known not to meet. */
export const apartGap = (a: Edge, b: Edge): Gap => {
  let best = endGap(a, b);
  for (const gap of facingGaps(a, b)) if (gap.gap < best.gap) best = gap;
  return best;
};

/** The least gap at an end of either edge. */
const endGap = (a: Edge, b: Edge): Gap => {
  const start = distanceToEdge(b, a.from.x, a.from.y);
  const end = distanceToEdge(b, a.to.x, a.to.y);
  const otherStart = distanceToEdge(a, b.from.x, b.from.y);
  const otherEnd = distanceToEdge(a, b.to.x, b.to.y);
  return Math.min(start, end) <= Math.min(otherStart, otherEnd)
    ? gapFromPoint(start <= end ? a.from : a.to, b)
    : turnedRound(gapFromPoint(otherStart <= otherEnd ? b.from : b.to, a));
};

/** `from` is the point itself, `to` the nearest point of the edge. */
export const gapFromPoint = (from: Point, edge: Edge): Gap => {
  const to = nearestOn(edge, from);
  return { gap: pointDistance(from, to), from, to };
};

const turnedRound = (gap: Gap): Gap => ({ gap: gap.gap, from: gap.to, to: gap.from });

/** The point of the edge nearest to `from`. */
const nearestOn = (edge: Edge, from: Point): Point =>
  edge.kind === "line" ? nearestOnLine(edge, from) : nearestOnArc(edge, from);

/** The distance alone: called for every edge of a long outline, so it makes no objects. */
export const distanceToEdge = (edge: Edge, x: number, y: number): number => {
  const { from, to } = edge;
  if (edge.kind === "line") {
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    const share = ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy);
    const kept = share > 0 ? Math.min(share, 1) : 0;
    return lengthOf(x - from.x - kept * dx, y - from.y - kept * dy);
  }
  const outX = x - edge.centre.x;
  const outY = y - edge.centre.y;
  const away = lengthOf(outX, outY);
  const scale = edge.radius / away;
  if (
    away > arithmeticNoise &&
    isBesideBow(edge, edge.centre.x + outX * scale, edge.centre.y + outY * scale)
  )
    return Math.abs(away - edge.radius);
  return Math.min(lengthOf(x - from.x, y - from.y), lengthOf(x - to.x, y - to.y));
};

const lengthOf = (dx: number, dy: number): number => Math.sqrt(dx * dx + dy * dy);

const nearestOnLine = ({ from: start, to: end }: LineEdge, from: Point): Point => {
  const dx = end.x - start.x;
  const dy = end.y - start.y;
  const along = (from.x - start.x) * dx + (from.y - start.y) * dy;
  const whole = dx * dx + dy * dy;
  if (along <= 0) return start;
  if (along >= whole) return end;
  return point(start.x + (dx * along) / whole, start.y + (dy * along) / whole);
};

const nearestOnArc = (arc: ArcEdge, from: Point): Point => {
  const dx = from.x - arc.centre.x;
  const dy = from.y - arc.centre.y;
  const away = Math.sqrt(dx * dx + dy * dy);
  if (away > arithmeticNoise) {
    const x = arc.centre.x + (dx / away) * arc.radius;
    const y = arc.centre.y + (dy / away) * arc.radius;
    if (isBesideBow(arc, x, y)) return point(x, y);
  }
  return pointDistance(from, arc.from) <= pointDistance(from, arc.to) ? arc.from : arc.to;
};

/** Gaps that lie square to both edges, between their ends. Two lines have none that their ends don't have. */
const facingGaps = (a: Edge, b: Edge): readonly Gap[] => {
  if (a.kind === "line") return b.kind === "line" ? [] : lineToArc(a, b);
  return b.kind === "line" ? lineToArc(b, a).map(turnedRound) : arcToArc(a, b);
};

const lineToArc = (line: LineEdge, arc: ArcEdge): readonly Gap[] => {
  const foot = nearestOnLine(line, arc.centre);
  const to = nearestOnArc(arc, foot);
  return [{ gap: pointDistance(foot, to), from: foot, to }];
};

const arcToArc = (a: ArcEdge, b: ArcEdge): readonly Gap[] => {
  const dx = b.centre.x - a.centre.x;
  const dy = b.centre.y - a.centre.y;
  const apart = Math.sqrt(dx * dx + dy * dy);
  if (apart <= arithmeticNoise) return [];
  const gaps: Gap[] = [];
  for (const side of [1, -1]) {
    const x = a.centre.x + (side * a.radius * dx) / apart;
    const y = a.centre.y + (side * a.radius * dy) / apart;
    if (isBesideBow(a, x, y)) gaps.push(gapFromPoint(point(x, y), b));
  }
  return gaps;
};
