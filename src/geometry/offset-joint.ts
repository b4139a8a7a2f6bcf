// An edge moved sideways, and how two moved edges are joined: cut back where they cross, rounded or mitred where
// they gape.

import { arcBulge } from "./arc.ts";
import { type Point, point } from "./contour.ts";
import { headingAt } from "./edge.ts";
import type { Edge } from "./edges.ts";
import { carrierMeetings } from "./meeting.ts";
import { midpoint, pointDistance } from "./point.ts";
import { mm } from "./quantity.ts";
import { miterLimit, samePlace } from "./tolerance.ts";

export type OffsetJoin = "round" | "miter";

export interface MovedEdge {
  readonly source: Edge;
  /** As moved, not yet cut back; an arc that the offset leaves no room for has a radius of 0 or less. */
  readonly edge: Edge;
}

/** Where one edge ends and the next begins; `bulge` is that of a round corner between the two. */
export interface Joint {
  readonly arrive: Point;
  readonly leave: Point;
  readonly bulge: number;
}

export interface Meeting {
  readonly before: MovedEdge;
  readonly after: MovedEdge;
  /** To the right of the edges' direction where positive. */
  readonly aside: number;
  readonly join: OffsetJoin;
}

export const movedEdge = (source: Edge, aside: number): MovedEdge => {
  const from = asideOf(source, "from", aside);
  const to = asideOf(source, "to", aside);
  if (source.kind === "line") return { source, edge: { kind: "line", from, to } };
  const radius = mm(source.turnsLeft ? source.radius + aside : source.radius - aside);
  return { source, edge: { ...source, from, to, radius } };
};

/** null where the moved edges do not meet. */
export const jointOf = (meeting: Meeting): Joint | null => {
  const { before, after, aside, join } = meeting;
  const arrive = before.edge.to;
  const leave = after.edge.from;
  if (pointDistance(arrive, leave) <= samePlace) return sharp(midpoint(arrive, leave));
  const cut = nearestMeeting(before.edge, after.edge);
  const corner = before.source.to;
  const isCorner = pointDistance(corner, after.source.from) <= samePlace;
  const turn = turnBetween(before.source, after.source);
  if (!isCorner || turn * aside < 0) return cut === null ? null : sharp(cut);
  if (join === "miter" && cut !== null) {
    const isShort = pointDistance(cut, corner) <= miterLimit * Math.abs(aside);
    if (isShort) return sharp(cut);
  }
  return { arrive, leave, bulge: arcBulge(corner, arrive, leave, turn > 0) };
};

const sharp = (at: Point): Joint => ({ arrive: at, leave: at, bulge: 0 });

const asideOf = (edge: Edge, end: "from" | "to", aside: number): Point => {
  const at = end === "from" ? edge.from : edge.to;
  const heading = headingAt(edge, end);
  return point(at.x + heading.y * aside, at.y - heading.x * aside);
};

/** Positive where the second edge turns left. */
const turnBetween = (before: Edge, after: Edge): number => {
  const arriving = headingAt(before, "to");
  const leaving = headingAt(after, "from");
  return arriving.x * leaving.y - arriving.y * leaving.x;
};

/** Of the places where the edges' lines or circles meet, the one nearest to the corner. */
const nearestMeeting = (before: Edge, after: Edge): Point | null => {
  const target = midpoint(before.to, after.from);
  let nearest: Point | null = null;
  for (const at of carrierMeetings(before, after)) {
    if (nearest === null || pointDistance(at, target) < pointDistance(nearest, target))
      nearest = at;
  }
  return nearest;
};
