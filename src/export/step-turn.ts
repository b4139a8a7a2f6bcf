// At a corner where several bounds meet, which one goes on: the first that is met when turning clockwise from where the
// bound came from, so that the face on the left is a corner of its own. Tangents are told apart by where they bend.

import { pointAlong } from "../geometry/edge.ts";
import type { Edge } from "../geometry/edges.ts";
import { pointDistance } from "../geometry/point.ts";
import { arcTangent2 } from "../geometry/trigonometry.ts";
import type { Places } from "./step-places.ts";
import { type DirectedSpan, endFraction, endOf } from "./step-spans.ts";

export const nextBound = (
  arriving: DirectedSpan,
  leaving: readonly DirectedSpan[],
  places: Places,
): DirectedSpan => {
  if (leaving.length === 1) return leaving[0]!;
  const corner = endOf(arriving);
  const distance =
    lookOut * Math.min(...[arriving, ...leaving].map((span) => scaleOf(span, places)));
  const back = angleAway(
    { ...arriving, isForward: !arriving.isForward },
    { corner, distance, places },
  );
  const turns = leaving.map((span) => {
    const turn = back - angleAway(span, { corner, distance, places });
    return turn > 0 ? turn : turn + 2 * Math.PI;
  });
  return leaving[turns.indexOf(Math.min(...turns))]!;
};

/** How far along the spans they are looked at, of the least length or radius: near the corner, far above rounding. */
const lookOut = 0.01;

const scaleOf = ({ span }: DirectedSpan, places: Places): number => {
  const length = pointDistance(places.at(span.from), places.at(span.to));
  return span.edge.kind === "arc" ? Math.min(length, span.edge.radius) : length;
};

/** Direction in which a span that leaves the corner lies at this distance along it. */
const angleAway = (
  { span, isForward }: DirectedSpan,
  at: { readonly corner: number; readonly distance: number; readonly places: Places },
): number => {
  const corner = at.places.at(at.corner);
  const share = at.distance / lengthOf(span.edge);
  const seen = pointAlong(span.edge, endFraction(span.edge, corner) + (isForward ? share : -share));
  return arcTangent2(seen.y - corner.y, seen.x - corner.x);
};

const lengthOf = (edge: Edge): number =>
  edge.kind === "arc" ? edge.radius * edge.sweep : pointDistance(edge.from, edge.to);
