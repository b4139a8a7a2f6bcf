// Where two edges cross or touch, exactly: line with line, line with arc, arc with arc.
// Edges that run along one another give no meeting of their own; the ends that lie on the other are the meeting.

import { type Point, point } from "./contour.ts";
import { isBesideBow } from "./edge.ts";
import type { ArcEdge, Edge, LineEdge } from "./edges.ts";
import { arithmeticNoise, parallel, samePlace } from "./tolerance.ts";

/** Points that both edges pass through, within `samePlace` at their ends. */
export const meetingsOf = (a: Edge, b: Edge): readonly Point[] =>
  carrierMeetings(a, b).filter((at) => isOnCarrierPart(a, at) && isOnCarrierPart(b, at));

/** Where the whole lines or circles that the edges are parts of meet; empty where they don't, or are one. */
export const carrierMeetings = (a: Edge, b: Edge): readonly Point[] => {
  if (a.kind === "line") return b.kind === "line" ? linesMeet(a, b) : lineMeetsCircle(a, b);
  return b.kind === "line" ? lineMeetsCircle(b, a) : circlesMeet(a, b);
};

/** A point on the edge's line or circle lies between the edge's ends. */
const isOnCarrierPart = (edge: Edge, at: Point): boolean => {
  if (isNear(edge.from, at) || isNear(edge.to, at)) return true;
  if (edge.kind === "arc") return isBesideBow(edge, at.x, at.y);
  const dx = edge.to.x - edge.from.x;
  const dy = edge.to.y - edge.from.y;
  const along = (at.x - edge.from.x) * dx + (at.y - edge.from.y) * dy;
  return along >= 0 && along <= dx * dx + dy * dy;
};

const isNear = (a: Point, b: Point): boolean => {
  const dx = a.x - b.x;
  const dy = a.y - b.y;
  return dx * dx + dy * dy <= samePlace * samePlace;
};

const linesMeet = (a: LineEdge, b: LineEdge): readonly Point[] => {
  const ax = a.to.x - a.from.x;
  const ay = a.to.y - a.from.y;
  const bx = b.to.x - b.from.x;
  const by = b.to.y - b.from.y;
  const cross = ax * by - ay * bx;
  const size = Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
  if (Math.abs(cross) <= size * parallel) return [];
  const fraction = ((b.from.x - a.from.x) * by - (b.from.y - a.from.y) * bx) / cross;
  return [point(a.from.x + ax * fraction, a.from.y + ay * fraction)];
};

const lineMeetsCircle = (line: LineEdge, arc: ArcEdge): readonly Point[] => {
  const dx = line.to.x - line.from.x;
  const dy = line.to.y - line.from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length === 0) return [];
  const alongX = dx / length;
  const alongY = dy / length;
  const toCentreX = arc.centre.x - line.from.x;
  const toCentreY = arc.centre.y - line.from.y;
  const along = toCentreX * alongX + toCentreY * alongY;
  const away = toCentreY * alongX - toCentreX * alongY;
  const outside = Math.abs(away) - arc.radius;
  if (outside > samePlace) return [];
  const footX = line.from.x + along * alongX;
  const footY = line.from.y + along * alongY;
  if (outside >= -arithmeticNoise) return [point(footX, footY)];
  const half = Math.sqrt((arc.radius - away) * (arc.radius + away));
  return [
    point(footX - half * alongX, footY - half * alongY),
    point(footX + half * alongX, footY + half * alongY),
  ];
};

const circlesMeet = (a: ArcEdge, b: ArcEdge): readonly Point[] => {
  const dx = b.centre.x - a.centre.x;
  const dy = b.centre.y - a.centre.y;
  const apart = Math.sqrt(dx * dx + dy * dy);
  if (apart <= arithmeticNoise) return [];
  const beyond = Math.max(apart - (a.radius + b.radius), Math.abs(a.radius - b.radius) - apart);
  if (beyond > samePlace) return [];
  const towardX = dx / apart;
  const towardY = dy / apart;
  const along = (apart + ((a.radius - b.radius) * (a.radius + b.radius)) / apart) / 2;
  const reach = Math.max(-a.radius, Math.min(a.radius, along));
  const half = Math.sqrt((a.radius - reach) * (a.radius + reach));
  const middleX = a.centre.x + reach * towardX;
  const middleY = a.centre.y + reach * towardY;
  if (beyond >= -arithmeticNoise) return [point(middleX, middleY)];
  return [
    point(middleX + half * towardY, middleY - half * towardX),
    point(middleX - half * towardY, middleY + half * towardX),
  ];
};
