// A polygon that came out of a polygon operation, turned back into lines and arcs: each side is traced to the edge that
// it lies on, sides of one edge become one, and corners are worked out again where two edges really meet.

import { arcBulge } from "./arc.ts";
import { type Chord, fromGrid, type GridPoint, type SourceIndex } from "./boolean-grid.ts";
import { type Contour, circle, loop, type Point, point, vertex } from "./contour.ts";
import type { ArcEdge, Edge, LineEdge } from "./edges.ts";
import { carrierMeetings } from "./meeting.ts";
import { pointDistance } from "./point.ts";
import { booleanGrid, booleanReach, booleanSliver, samePlace } from "./tolerance.ts";

/** Sides in a row that lie on one line or circle. */
interface Run {
  readonly edge: Edge;
  readonly start: GridPoint;
  /** In millimetres. */
  readonly length: number;
  /** Twice the area swept round the arc's centre, in mm²: positive turns left. */
  readonly swept: number;
}

/** null where nothing of any size is left of the polygon. */
export const recovered = (polygon: readonly GridPoint[], sources: SourceIndex): Contour | null => {
  const corners = withoutSlivers(polygon, sources);
  if (corners.length < 3) return null;
  const runs = runsOf(corners, sources);
  if (runs.length === 1) {
    const { edge } = runs[0]!;
    return edge.kind === "arc" ? circle(edge.centre, edge.radius) : null;
  }
  const joints = runs.map((run, index) =>
    jointOf(runs[(index + runs.length - 1) % runs.length]!, run, sources),
  );
  const vertices = runs.flatMap((run, index) => {
    const from = joints[index]!;
    const to = joints[(index + 1) % runs.length]!;
    return pointDistance(from, to) <= samePlace
      ? []
      : [vertex(from.x, from.y, bulgeOf(run, from, to))];
  });
  const isFlat = vertices.length === 2 && vertices.every(({ bulge }) => bulge === 0);
  return vertices.length < 2 || isFlat ? null : loop(vertices);
};

/** Corners less than a sliver apart are one crossing that rounding has torn; the source's own vertex stands for it. */
const withoutSlivers = (
  polygon: readonly GridPoint[],
  sources: SourceIndex,
): readonly GridPoint[] => {
  const kept: GridPoint[] = [];
  for (const corner of polygon) {
    const before = kept.at(-1);
    if (before === undefined || !isSliver(before, corner)) kept.push(corner);
    else if (sources.vertexAt(corner.x, corner.y) !== null) kept[kept.length - 1] = corner;
  }
  while (kept.length > 1 && isSliver(kept[0]!, kept.at(-1)!)) kept.pop();
  return kept;
};

const isSliver = (a: GridPoint, b: GridPoint): boolean =>
  Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y)) * booleanGrid <= booleanSliver;

const runsOf = (corners: readonly GridPoint[], sources: SourceIndex): readonly Run[] => {
  const runs: Run[] = [];
  let before: Edge | null = null;
  for (const [index, from] of corners.entries()) {
    const to = corners[(index + 1) % corners.length]!;
    const edge = edgeUnder(from, to, { sources, before });
    before = edge;
    const side = runOf(edge, from, to);
    const last = runs.at(-1);
    if (last !== undefined && isSameCarrier(last.edge, edge))
      runs[runs.length - 1] = joined(last, side);
    else runs.push(side);
  }
  const first = runs[0]!;
  const last = runs.at(-1)!;
  if (runs.length === 1 || !isSameCarrier(first.edge, last.edge)) return runs;
  return [joined(last, first), ...runs.slice(1, -1)];
};

const runOf = (edge: Edge, from: GridPoint, to: GridPoint): Run => {
  const start = fromGrid(from.x, from.y);
  const end = fromGrid(to.x, to.y);
  const swept =
    edge.kind === "line"
      ? 0
      : (start.x - edge.centre.x) * (end.y - edge.centre.y) -
        (start.y - edge.centre.y) * (end.x - edge.centre.x);
  return { edge, start: from, length: pointDistance(start, end), swept };
};

const joined = (first: Run, second: Run): Run => ({
  edge: first.edge,
  start: first.start,
  length: first.length + second.length,
  swept: first.swept + second.swept,
});

interface Tracing {
  readonly sources: SourceIndex;
  /** The edge of the side before: of two that fit equally well it is the likelier. */
  readonly before: Edge | null;
}

/** Grid units that rounding may move a side off the chord that it lies on, and the preference for going on. */
const farthestOff = 6;
const preference = 1;

/** The edge whose chord the side lies on; a straight edge of its own where there is none. */
const edgeUnder = (from: GridPoint, to: GridPoint, { sources, before }: Tracing): Edge => {
  const whole = sources.between(from, to);
  if (whole !== null) return whole.edge;
  let best: Edge = { kind: "line", from: fromGrid(from.x, from.y), to: fromGrid(to.x, to.y) };
  let least = farthestOff;
  for (const chord of sources.near((from.x + to.x) / 2, (from.y + to.y) / 2)) {
    const isNext = before !== null && isSameCarrier(before, chord.edge);
    const off = distanceOff(chord, from, to) - (isNext ? preference : 0);
    if (off < least) {
      least = off;
      best = chord.edge;
    }
  }
  return best;
};

/** How far the side's ends lie off the chord's line, or its middle beyond the chord's ends. */
const distanceOff = (chord: Chord, from: GridPoint, to: GridPoint): number => {
  const dx = chord.toX - chord.fromX;
  const dy = chord.toY - chord.fromY;
  const length = Math.sqrt(dx * dx + dy * dy);
  const fromOff = Math.abs((from.x - chord.fromX) * dy - (from.y - chord.fromY) * dx) / length;
  const toOff = Math.abs((to.x - chord.fromX) * dy - (to.y - chord.fromY) * dx) / length;
  const middleX = (from.x + to.x) / 2 - chord.fromX;
  const middleY = (from.y + to.y) / 2 - chord.fromY;
  const along = (middleX * dx + middleY * dy) / length;
  return Math.max(fromOff, toOff, -along, along - length);
};

const isSameCarrier = (a: Edge, b: Edge): boolean => {
  if (a === b) return true;
  if (a.kind === "line") return b.kind === "line" && isSameLine(a, b);
  return b.kind === "arc" && isSameCircle(a, b);
};

const isSameCircle = (a: ArcEdge, b: ArcEdge): boolean =>
  Math.abs(a.radius - b.radius) <= samePlace && pointDistance(a.centre, b.centre) <= samePlace;

const isSameLine = (a: LineEdge, b: LineEdge): boolean => {
  const isLonger = pointDistance(a.from, a.to) >= pointDistance(b.from, b.to);
  const [line, other] = isLonger ? [a, b] : [b, a];
  return offCarrier(line, other.from) <= samePlace && offCarrier(line, other.to) <= samePlace;
};

/** Distance of a place from the edge's whole line or circle. */
const offCarrier = (edge: Edge, at: Point): number => {
  if (edge.kind === "arc") return Math.abs(pointDistance(edge.centre, at) - edge.radius);
  const dx = edge.to.x - edge.from.x;
  const dy = edge.to.y - edge.from.y;
  const aside = (at.x - edge.from.x) * dy - (at.y - edge.from.y) * dx;
  return Math.abs(aside) / Math.sqrt(dx * dx + dy * dy);
};

/** The corner where one run ends and the next begins. */
const jointOf = (before: Run, after: Run, sources: SourceIndex): Point => {
  const own = sources.vertexAt(after.start.x, after.start.y);
  const isOwn =
    own !== null &&
    offCarrier(before.edge, own) <= samePlace &&
    offCarrier(after.edge, own) <= samePlace;
  if (isOwn) return own;
  const rough = fromGrid(after.start.x, after.start.y);
  const reach = Math.max(booleanReach, Math.min(before.length, after.length) / 2);
  let nearest: Point | null = null;
  for (const at of carrierMeetings(before.edge, after.edge)) {
    const limit = nearest === null ? reach : pointDistance(nearest, rough);
    if (pointDistance(at, rough) <= limit) nearest = at;
  }
  return nearest ?? onCarrier(before.edge, onCarrier(after.edge, rough));
};

/** The place moved onto the edge's circle; a straight edge leaves it where it is. */
const onCarrier = (edge: Edge, at: Point): Point => {
  if (edge.kind === "line") return at;
  const away = pointDistance(edge.centre, at);
  if (away <= samePlace) return at;
  return point(
    edge.centre.x + ((at.x - edge.centre.x) / away) * edge.radius,
    edge.centre.y + ((at.y - edge.centre.y) / away) * edge.radius,
  );
};

/** Above this bulge an arc turns by more than three quarters. */
const threeQuarterBulge = 1 + Math.sqrt(2);

const bulgeOf = ({ edge, swept }: Run, from: Point, to: Point): number => {
  if (edge.kind === "line") return 0;
  const bulge = arcBulge(edge.centre, from, to, swept > 0);
  // A short run whose worked-out corners have passed one another would come out as nearly a whole turn.
  const isPassed =
    Math.abs(bulge) > threeQuarterBulge && Math.abs(swept) < edge.radius * edge.radius;
  return isPassed ? 0 : bulge;
};
