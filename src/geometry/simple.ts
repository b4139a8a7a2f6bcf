// Is an outline one simple loop: every edge with length, no edge crossing, touching or doubling back on another?
// Gives every fault with its place, in the order of the edges; an outline without faults can be cut.

import { type BoxedEdge, boxed } from "./boxed-edges.ts";
import { containsPoint } from "./containment.ts";
import { type Contour, type Point, point, type Region } from "./contour.ts";
import { boundariesTouch, contourDistance } from "./distance.ts";
import { headingAt } from "./edge.ts";
import { edgeGap } from "./edge-distance.ts";
import { type Edge, edgesOf } from "./edges.ts";
import { type Extent, extentGap } from "./extent.ts";
import { contourExtent } from "./measure.ts";
import { meetingsOf } from "./meeting.ts";
import { pointDistance } from "./point.ts";
import { parallel, samePlace } from "./tolerance.ts";

export interface OutlineFault {
  readonly at: Point;
  readonly why: string;
}

export const loopFaults = (contour: Contour): readonly OutlineFault[] => {
  const unfinished = numberFaults(contour);
  if (unfinished.length > 0) return unfinished;
  if (contour.kind === "circle")
    return contour.radius > samePlace ? [] : [{ at: contour.centre, why: "a circle without size" }];
  const edges = boxed(edgesOf(contour));
  if (edges.length < 2) return [{ at: firstPoint(contour), why: "fewer than two edges" }];
  const short = edges.filter(({ edge }) => pointDistance(edge.from, edge.to) <= samePlace);
  if (short.length > 0)
    return short.map(({ edge }) => ({ at: edge.from, why: "an edge without length" }));
  return [...cornerFaults(edges), ...crossingFaults(edges)];
};

/** Faults of the outline and of each hole, then holes that leave the outline or come upon one another. */
export const regionFaults = (region: Region): readonly OutlineFault[] => {
  const own = [region.outline, ...region.holes].flatMap(loopFaults);
  return own.length > 0 ? own : holeFaultsOf(region);
};

/** Holes that leave the outline or come upon one another, where each of them is simple. */
export const holeFaultsOf = (region: Region): readonly OutlineFault[] =>
  region.holes.flatMap((hole, index) => [
    ...outlineFaultsOf(region.outline, hole),
    ...region.holes.slice(index + 1).flatMap((other) => holeFaults(hole, other)),
  ]);

const numberFaults = (contour: Contour): readonly OutlineFault[] => {
  const hasNumbers =
    contour.kind === "circle"
      ? Number.isFinite(contour.centre.x + contour.centre.y + contour.radius)
      : contour.vertices.every(({ x, y, bulge }) => Number.isFinite(x + y + bulge));
  if (hasNumbers) return [];
  return [{ at: firstPoint(contour), why: "a place that is not a finite number" }];
};

const firstPoint = (contour: Contour): Point => {
  const first = contour.kind === "circle" ? contour.centre : contour.vertices[0];
  return first === undefined ? point(0, 0) : point(first.x, first.y);
};

/** Where an edge turns straight back along the one before it, or meets it a second time. */
const cornerFaults = (edges: readonly BoxedEdge[]): readonly OutlineFault[] => {
  const faults: OutlineFault[] = [];
  for (const [index, after] of edges.entries()) {
    const before = edges[(index + edges.length - 1) % edges.length]!;
    if (isDoubledBack(before.edge, after.edge))
      faults.push({ at: after.edge.from, why: "an edge doubles back on the one before it" });
    const second =
      edges.length > 2 || index === 0 ? secondMeeting(before, after, edges.length) : null;
    if (second !== null) faults.push({ at: second, why: "two edges cross" });
  }
  return faults;
};

/** A line and an arc, or two arcs, that meet in a cusp share no more than its tip: only lines run back over one another. */
const isDoubledBack = (before: Edge, after: Edge): boolean => {
  if (before.kind === "arc" || after.kind === "arc") return false;
  const arriving = headingAt(before, "to");
  const leaving = headingAt(after, "from");
  const cross = arriving.x * leaving.y - arriving.y * leaving.x;
  const dot = arriving.x * leaving.x + arriving.y * leaving.y;
  return dot < 0 && Math.abs(cross) <= parallel;
};

/** A place where neighbours meet besides their common end. */
const secondMeeting = (before: BoxedEdge, after: BoxedEdge, count: number): Point | null => {
  if (before.edge.kind === "line" && after.edge.kind === "line") return null;
  if (!shareMoreThanCorner(before.box, after.box)) return null;
  const { from, to } = after.edge;
  for (const at of meetingsOf(before.edge, after.edge)) {
    const isShared = isNear(at, from) || (count === 2 && isNear(at, to));
    if (!isShared) return at;
  }
  return null;
};

const isNear = (a: Point, b: Point): boolean => pointDistance(a, b) <= 2 * samePlace;

const shareMoreThanCorner = (a: Extent, b: Extent): boolean =>
  Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX) > samePlace ||
  Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY) > samePlace;

/** Pairs of edges that are not neighbours and come within `samePlace`, found by sweeping along x. */
const crossingFaults = (edges: readonly BoxedEdge[]): readonly OutlineFault[] => {
  const order = edges.map((_, index) => index);
  order.sort((a, b) => edges[a]!.box.minX - edges[b]!.box.minX || a - b);
  const found: { readonly first: number; readonly second: number; readonly fault: OutlineFault }[] =
    [];
  for (const [position, one] of order.entries()) {
    const reach = edges[one]!.box.maxX + samePlace;
    for (let next = position + 1; next < order.length; next += 1) {
      const other = order[next]!;
      if (edges[other]!.box.minX > reach) break;
      const fault = areNeighbours(one, other, edges.length)
        ? null
        : touchOf(edges[one]!, edges[other]!);
      if (fault !== null)
        found.push({ first: Math.min(one, other), second: Math.max(one, other), fault });
    }
  }
  found.sort((a, b) => a.first - b.first || a.second - b.second);
  return found.map(({ fault }) => fault);
};

const areNeighbours = (a: number, b: number, count: number): boolean => {
  const step = Math.abs(a - b);
  return step === 1 || step === count - 1;
};

const touchOf = (a: BoxedEdge, b: BoxedEdge): OutlineFault | null => {
  if (extentGap(a.box, b.box) > samePlace) return null;
  const { gap, from } = edgeGap(a.edge, b.edge);
  return gap <= samePlace ? { at: from, why: "two edges cross or touch" } : null;
};

const outlineFaultsOf = (outline: Contour, hole: Contour): readonly OutlineFault[] => {
  if (boundariesTouch(hole, outline))
    return [
      { at: contourDistance(hole, outline).from, why: "a hole crosses or touches the outline" },
    ];
  const at = firstPlace(hole);
  return containsPoint(outline, at) ? [] : [{ at, why: "a hole lies outside the outline" }];
};

const holeFaults = (a: Contour, b: Contour): readonly OutlineFault[] => {
  if (extentGap(contourExtent(a), contourExtent(b)) > samePlace) return [];
  const isApart =
    !boundariesTouch(a, b) && !containsPoint(a, firstPlace(b)) && !containsPoint(b, firstPlace(a));
  return isApart ? [] : [{ at: contourDistance(a, b).from, why: "two holes overlap or touch" }];
};

/** A place on the boundary. */
const firstPlace = (contour: Contour): Point => edgesOf(contour)[0]!.from;
