// The edges of two layers where they meet, cut at every place where one layer's edges come upon the other's, so that
// what both share is one span. Material lies on the left of each edge.

import { containsPoint } from "../geometry/containment.ts";
import type { Point } from "../geometry/contour.ts";
import { edgeExtent, fractionAlong, pointAlong } from "../geometry/edge.ts";
import { distanceToEdge } from "../geometry/edge-distance.ts";
import { type Edge, edgesOf } from "../geometry/edges.ts";
import { type Extent, extentGap } from "../geometry/extent.ts";
import { contourArea } from "../geometry/measure.ts";
import { meetingsOf } from "../geometry/meeting.ts";
import type { SolidContour, SolidLayer } from "../geometry/solid/solid.ts";
import { samePlace } from "../geometry/tolerance.ts";
import type { Places } from "./step-places.ts";

/** A layer as its directed edges and the question where its material is. */
export interface LayerShape {
  readonly edges: readonly DirectedEdge[];
  hasMaterialAt(at: Point): boolean;
}

export interface DirectedEdge {
  readonly edge: Edge;
  readonly box: Extent;
}

/** A piece of a line or circle between two places; `from` and `to` are their numbers. */
export interface Span {
  readonly from: number;
  readonly to: number;
  /** Line or circle that it lies on, run from `from` to `to`. */
  readonly edge: Edge;
  readonly middle: Point;
}

/** A span as an edge runs along it. */
export interface DirectedSpan {
  readonly span: Span;
  readonly isForward: boolean;
}

/** Numbers of the places that it runs from and to. */
export const startOf = ({ span, isForward }: DirectedSpan): number =>
  isForward ? span.from : span.to;

export const endOf = ({ span, isForward }: DirectedSpan): number =>
  isForward ? span.to : span.from;

export const layerShape = ({ regions }: SolidLayer): LayerShape => ({
  edges: regions.flatMap(({ outline, holes }) => [
    ...directedEdges(outline, "left"),
    ...holes.flatMap((hole) => directedEdges(hole, "right")),
  ]),
  hasMaterialAt: (at) =>
    regions.some(
      ({ outline, holes }) =>
        containsPoint(outline.contour, at) &&
        !holes.some(({ contour }) => containsPoint(contour, at)),
    ),
});

/** With the inside of the contour on this side. */
const directedEdges = (
  { contour }: SolidContour,
  inside: "left" | "right",
): readonly DirectedEdge[] => {
  const edges = edgesOf(contour);
  const isTurned = contourArea(contour) > 0 !== (inside === "left");
  return (isTurned ? edges.toReversed().map(turnedRound) : edges).map((edge) => ({
    edge,
    box: edgeExtent(edge),
  }));
};

const turnedRound = (edge: Edge): Edge =>
  edge.kind === "line"
    ? { ...edge, from: edge.to, to: edge.from }
    : { ...edge, from: edge.to, to: edge.from, turnsLeft: !edge.turnsLeft };

/** Gives every span of a level the same object, whichever layer it is met in. */
export interface SpanTable {
  spanOf(edge: Edge, from: number, to: number): DirectedSpan;
}

export const spanTable = (places: Places): SpanTable => {
  const spans = new Map<string, Span>();
  return {
    spanOf: (edge, from, to) => {
      const middle = middleBetween(edge, places.at(from), places.at(to));
      const name = `${Math.min(from, to)},${Math.max(from, to)},${places.numberOf(middle)}`;
      const known = spans.get(name);
      if (known !== undefined) return { span: known, isForward: known.from === from };
      const span = { from, to, edge, middle };
      spans.set(name, span);
      return { span, isForward: true };
    },
  };
};

const middleBetween = (edge: Edge, from: Point, to: Point): Point => {
  const start = endFraction(edge, from);
  const end = endFraction(edge, to);
  return pointAlong(edge, (start + end) / 2);
};

/** Ends are ends: an arc of nearly a whole turn can't tell them apart by the angle. */
export const endFraction = (edge: Edge, at: Point): number => {
  if (isNear(edge.from, at)) return 0;
  return isNear(edge.to, at) ? 1 : fractionAlong(edge, at);
};

const isNear = (a: Point, b: Point): boolean =>
  Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y)) <= 4 * samePlace;

/** The spans of one edge, in its direction, cut where edges of the other layer come upon it. */
export const spansOfEdge = (
  { edge, box }: DirectedEdge,
  others: readonly DirectedEdge[],
  { places, table }: { readonly places: Places; readonly table: SpanTable },
): readonly DirectedSpan[] => {
  const start = places.numberOf(edge.from);
  const end = places.numberOf(edge.to);
  const cuts = new Map<number, number>();
  for (const other of others) {
    if (extentGap(box, other.box) > samePlace) continue;
    for (const at of [...meetingsOf(edge, other.edge), other.edge.from, other.edge.to]) {
      if (distanceToEdge(edge, at.x, at.y) > samePlace) continue;
      const place = places.numberOf(at);
      if (place !== start && place !== end) cuts.set(place, fractionAlong(edge, at));
    }
  }
  const inOrder = [...cuts].sort((a, b) => a[1] - b[1]).map(([place]) => place);
  const stops = [start, ...inOrder, end];
  return stops.slice(1).map((to, index) => table.spanOf(edge, stops[index]!, to));
};
