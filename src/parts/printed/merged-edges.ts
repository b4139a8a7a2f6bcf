// Outlines without crumbs. Areas grown, shrunk and cut many times break where arcs run along one another, into crumbs of
// a few micrometres; runs of them that follow one arc or line become that arc or line again.

import { arcBulge } from "../../geometry/arc.ts";
import {
  type Contour,
  loop,
  type Point,
  point,
  type Region,
  type Vertex,
  vertex,
} from "../../geometry/contour.ts";
import { pointAlong } from "../../geometry/edge.ts";
import { distanceToEdge } from "../../geometry/edge-distance.ts";
import { type Edge, edgeBetween, edgesOf } from "../../geometry/edges.ts";
import { pointDistance } from "../../geometry/point.ts";

/** Less than a hundredth of a printed line of 0.45 mm: how far a merged edge may lie from what it stands for. */
const FIT = 0.003;

/** Runs of this many edges at most; crumbs come in tens. */
const MOST_IN_RUN = 60;

/** Only runs with an edge as short as this are crumbs: real shapes of printed parts are longer. */
const CRUMB = 0.3;

export const mergedRegion = ({ outline, holes }: Region): Region => ({
  outline: mergedContour(outline),
  holes: holes.map(mergedContour),
});

/** Edges that stand alone stay exactly as they are. */
const mergedContour = (contour: Contour): Contour => {
  if (contour.kind === "circle") return contour;
  const edges = edgesOf(contour);
  if (edges.every((edge) => lengthOf(edge) > CRUMB)) return contour;
  const start = longest(edges);
  const turned = [...edges.slice(start), ...edges.slice(0, start)];
  const bulges = [...contour.vertices.slice(start), ...contour.vertices.slice(0, start)];
  const merged: Vertex[] = [];
  for (let at = 0; at < turned.length; ) {
    const run = longestRun(turned, at);
    const { from } = turned[at]!;
    merged.push(vertex(from.x, from.y, run === null ? bulges[at]!.bulge : run.bulge));
    at = run === null ? at + 1 : run.next;
  }
  return merged.length < 2 ? contour : loop(merged);
};

const lengthOf = ({ from, to }: Edge): number => pointDistance(from, to);

const longest = (edges: readonly Edge[]): number => {
  let found = 0;
  for (const [index, edge] of edges.entries())
    if (lengthOf(edge) > lengthOf(edges[found]!)) found = index;
  return found;
};

interface Run {
  readonly bulge: number;
  /** The first edge after it. */
  readonly next: number;
}

/** The longest run from an edge that one edge stands for; null where it stands alone. */
const longestRun = (edges: readonly Edge[], start: number): Run | null => {
  let best: Run | null = null;
  const samples: Point[] = [pointAlong(edges[start]!, 1 / 2)];
  let hasCrumb = lengthOf(edges[start]!) <= CRUMB;
  const last = Math.min(edges.length, start + MOST_IN_RUN);
  for (let end = start + 1; end < last; end += 1) {
    const edge = edges[end]!;
    hasCrumb ||= lengthOf(edge) <= CRUMB;
    samples.push(edge.from, pointAlong(edge, 1 / 2));
    if (!hasCrumb) break;
    const bulge = fittedBulge(edges[start]!.from, edge.to, samples);
    if (bulge === null) {
      if (end - start > LOOK_AHEAD) break;
      continue;
    }
    best = { bulge, next: end + 1 };
  }
  return best;
};

/** A run may fail to fit for a few crumbs, that turn back, and fit again after them. */
const LOOK_AHEAD = 12;

/** The bulge of the arc or line from end to end that comes near to all samples; null where there is none. */
const fittedBulge = (from: Point, to: Point, samples: readonly Point[]): number | null => {
  const chord = pointDistance(from, to);
  if (chord <= FIT) return null;
  const bulge = threePointBulge(from, middleMost(from, to, samples), to);
  if (Math.abs(bulge) >= 1) return null;
  const edge = edgeBetween(from, to, bulge);
  return samples.every(({ x, y }) => distanceToEdge(edge, x, y) <= FIT) ? bulge : null;
};

/** The sample that lies nearest to the middle of the chord, along it. */
const middleMost = (from: Point, to: Point, samples: readonly Point[]): Point => {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const half = (dx * dx + dy * dy) / 2;
  const off = (at: Point): number => Math.abs((at.x - from.x) * dx + (at.y - from.y) * dy - half);
  return samples.reduce((best, at) => (off(at) < off(best) ? at : best));
};

/** Bulge of the arc through three points; 0 where they lie on a line within the fit. */
const threePointBulge = (from: Point, through: Point, to: Point): number => {
  const ax = through.x - from.x;
  const ay = through.y - from.y;
  const bx = to.x - from.x;
  const by = to.y - from.y;
  const cross = ax * by - ay * bx;
  const chord = Math.sqrt(bx * bx + by * by);
  if (Math.abs(cross) / chord <= FIT / 2) return 0;
  const a = ax * ax + ay * ay;
  const b = bx * bx + by * by;
  const centre = point(
    from.x + (by * a - ay * b) / (2 * cross),
    from.y + (ax * b - bx * a) / (2 * cross),
  );
  return arcBulge(centre, from, to, cross > 0);
};
