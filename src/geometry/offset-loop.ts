// A loop's edges moved sideways, joined again and proved: the result is one simple loop, runs the same way, and keeps
// its distance from the source. Used by offsetContour, and by the inset of letters, which lets tight arcs go.

import { arcBulge } from "./arc.ts";
import { type BoxedEdge, boxed } from "./boxed-edges.ts";
import { containsPoint } from "./containment.ts";
import { type Loop, loop, type Point, type Vertex, vertex } from "./contour.ts";
import { pointAlong } from "./edge.ts";
import { distanceToEdge } from "./edge-distance.ts";
import { type Edge, edgesOf } from "./edges.ts";
import { contourArea } from "./measure.ts";
import { decimal } from "./number.ts";
import { type Joint, jointOf, type MovedEdge, movedEdge, type OffsetJoin } from "./offset-joint.ts";
import { pointDistance } from "./point.ts";
import { loopFaults } from "./simple.ts";
import { offsetNoise, samePlace } from "./tolerance.ts";

export interface OffsetOptions {
  readonly join: OffsetJoin;
  /** What becomes of edges that the offset leaves no room for. */
  readonly lostEdges: "refused" | "left-out";
}

export type LoopOffset =
  | { readonly kind: "offset"; readonly loop: Loop }
  | { readonly kind: "refused"; readonly why: string };

export const offsetLoop = (shape: Loop, distance: number, options: OffsetOptions): LoopOffset => {
  const edges = edgesOf(shape);
  const pointless = edges.find(({ from, to }) => pointDistance(from, to) <= samePlace);
  if (pointless !== undefined) return refusedAt(pointless.from, "an edge has no length");
  // Outward is to the right of a loop that runs counter-clockwise.
  const aside = contourArea(shape) < 0 ? -distance : distance;
  const moved = edges.map((edge) => movedEdge(edge, aside));
  const lost = moved.find(({ edge }) => edge.kind === "arc" && edge.radius < -samePlace);
  if (lost !== undefined && options.lostEdges === "refused")
    return refusedAt(
      lost.source.from,
      `an arc tighter than ${decimal(Math.abs(distance), 4)} mm leaves no room`,
    );
  const kept = moved.filter(({ edge }) => edge.kind === "line" || edge.radius > samePlace);
  const run = joinedRun(kept, aside, options);
  if (run.kind === "refused") return run;
  return proved(run.loop, { shape, edges: boxed(edges), distance, join: options.join });
};

const refusedAt = (at: Point, why: string): LoopOffset => ({
  kind: "refused",
  why: `${why} at ${decimal(at.x, 3)}, ${decimal(at.y, 3)}`,
});

/** Passes in which edges that have no room are left out, before the outline is given up. */
const mostPasses = 12;

const joinedRun = (
  edges: readonly MovedEdge[],
  aside: number,
  { join, lostEdges }: OffsetOptions,
): LoopOffset => {
  let kept = edges;
  for (let pass = 0; pass < mostPasses; pass += 1) {
    if (kept.length < 2) return { kind: "refused", why: "the outline closes up" };
    const joints = jointsOf(kept, aside, join);
    const roomless = roomlessEdges(kept, joints);
    if (roomless.size === 0) {
      const found = joints.filter((joint) => joint !== null);
      return { kind: "offset", loop: loop(verticesOf(kept, found)) };
    }
    const [index, why] = [...roomless][0]!;
    if (lostEdges === "refused") return refusedAt(kept[index]!.source.to, why);
    kept = kept.filter((_, place) => !roomless.has(place));
  }
  return { kind: "refused", why: "too many edges close up" };
};

/** Edges that can't stay, by index, with the reason: edges that don't meet their next, or else have collapsed. */
const roomlessEdges = (
  kept: readonly MovedEdge[],
  joints: readonly (Joint | null)[],
): ReadonlyMap<number, string> => {
  const roomless = new Map<number, string>();
  for (const [index, joint] of joints.entries()) {
    if (joint !== null) continue;
    const next = (index + 1) % kept.length;
    const isNextTighter = movedRadius(kept[next]!) < movedRadius(kept[index]!);
    roomless.set(isNextTighter ? next : index, "the moved edges do not meet");
  }
  if (roomless.size > 0) return roomless;
  const found = joints.filter((joint) => joint !== null);
  for (const [index, edge] of kept.entries())
    if (hasCollapsed(edge, index, found)) roomless.set(index, "an edge closes up");
  return roomless;
};

const movedRadius = ({ edge }: MovedEdge): number =>
  edge.kind === "arc" ? edge.radius : Number.POSITIVE_INFINITY;

/** Joint i is at the end of edge i. */
const jointsOf = (
  kept: readonly MovedEdge[],
  aside: number,
  join: OffsetJoin,
): readonly (Joint | null)[] =>
  kept.map((before, index) =>
    jointOf({ before, after: kept[(index + 1) % kept.length]!, aside, join }),
  );

const startOf = (index: number, joints: readonly Joint[]): Point =>
  joints[(index + joints.length - 1) % joints.length]!.leave;

/** Nothing is left of the edge, or its ends have passed one another. */
const hasCollapsed = ({ edge }: MovedEdge, index: number, joints: readonly Joint[]): boolean => {
  const from = startOf(index, joints);
  const to = joints[index]!.arrive;
  if (edge.kind === "line") {
    const ahead =
      (to.x - from.x) * (edge.to.x - edge.from.x) + (to.y - from.y) * (edge.to.y - edge.from.y);
    return ahead <= 0 || pointDistance(from, to) <= samePlace;
  }
  const sweep = Math.abs(arcBulge(edge.centre, from, to, edge.turnsLeft));
  const sourceSweep = Math.abs(arcBulge(edge.centre, edge.from, edge.to, edge.turnsLeft));
  if (pointDistance(from, to) <= samePlace && sourceSweep < 1) return true;
  // tan of a quarter of what the sweep has grown by: above 1 it has jumped by more than half a turn.
  return (sweep - sourceSweep) / (1 + sweep * sourceSweep) > 1;
};

const verticesOf = (kept: readonly MovedEdge[], joints: readonly Joint[]): readonly Vertex[] =>
  kept.flatMap(({ edge }, index) => {
    const from = startOf(index, joints);
    const { arrive, bulge } = joints[index]!;
    const own = edge.kind === "line" ? 0 : arcBulge(edge.centre, from, arrive, edge.turnsLeft);
    const start = vertex(from.x, from.y, own);
    return bulge === 0 ? [start] : [start, vertex(arrive.x, arrive.y, bulge)];
  });

/** What was asked: this shape, moved by this distance. */
interface Asked {
  readonly shape: Loop;
  readonly edges: readonly BoxedEdge[];
  readonly distance: number;
  readonly join: OffsetJoin;
}

/** Edges that moved well one by one may still have moved into one another: then the loop shows it. */
const proved = (moved: Loop, asked: Asked): LoopOffset => {
  const fault = loopFaults(moved)[0];
  if (fault !== undefined) return refusedAt(fault.at, "the moved outline meets itself");
  if (contourArea(moved) > 0 !== contourArea(asked.shape) > 0)
    return { kind: "refused", why: "the outline turns inside out" };
  const edges = edgesOf(moved);
  const stray = edges.find((edge) => !hasKeptDistance(edge, asked));
  if (stray !== undefined)
    return refusedAt(stray.from, "the moved outline strays from its distance");
  // Having kept its distance it never crosses the source: one place tells on which side all of it lies.
  return containsPoint(asked.shape, edges[0]!.from) === asked.distance < 0
    ? { kind: "offset", loop: moved }
    : { kind: "refused", why: "the moved outline lies on the wrong side" };
};

/** A mitred corner may lie further out than the distance asked; nothing may lie nearer. */
const hasKeptDistance = (edge: Edge, { edges, distance, join }: Asked): boolean => {
  const wanted = Math.abs(distance);
  const away = distanceWithin(edges, pointAlong(edge, 1 / 2), wanted + offsetNoise);
  if (away < wanted - offsetNoise) return false;
  if (join === "round" && away > wanted + offsetNoise) return false;
  return distanceWithin(edges, edge.from, wanted) >= wanted - offsetNoise;
};

/** Distance to the nearest of the edges whose boxes come within `reach`; Infinity where none does. */
const distanceWithin = (edges: readonly BoxedEdge[], { x, y }: Point, reach: number): number => {
  let nearest = Number.POSITIVE_INFINITY;
  for (const { edge, box } of edges) {
    const isFar =
      x < box.minX - reach || x > box.maxX + reach || y < box.minY - reach || y > box.maxY + reach;
    if (!isFar) nearest = Math.min(nearest, distanceToEdge(edge, x, y));
  }
  return nearest;
};
