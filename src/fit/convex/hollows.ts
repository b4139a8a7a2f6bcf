// A piece that stands whole in another's hollow: their hulls meet, and what they are made of does not. Asked only where hulls meet,
// since a sheet's or a printed wall's hull holds whatever passes through it.

import { boxedEdgesOf } from "../../geometry/boxed-edges.ts";
import { containsPoint } from "../../geometry/containment.ts";
import { type Contour, loop, type Point, point, vertex } from "../../geometry/contour.ts";
import { convexHull } from "../../geometry/convex-hull.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { type Extent, extent, extentGap } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import { type Frame, pointIn, pointOut } from "../../geometry/space/frame.ts";
import { type Vector, vector } from "../../geometry/space/vector.ts";
import type { ConvexPiece } from "./convex-piece.ts";
import type { Nearest } from "./nearest-points.ts";

/** Of the second piece, seen from the first; a gap of more is not worth its figure. */
export interface HollowSearch {
  readonly frame: Frame;
  readonly within: number;
}

/** Seen along the hollow: never farther than the two are apart. `meet`: neither stands clear of all walls in a hollow of the other. */
export const hollowRelation = (
  first: ConvexPiece,
  second: ConvexPiece,
  { frame, within }: HollowSearch,
): Nearest => {
  const inFirst = clearIn(first, second, { within, seen: (at) => pointOut(frame, at) });
  if (inFirst.kind !== "meet") return inFirst;
  const inSecond = clearIn(second, first, { within, seen: (at) => pointIn(frame, at) });
  if (inSecond.kind !== "apart") return inSecond;
  const { onFirst: wall, onSecond: stands } = inSecond;
  return { ...inSecond, onFirst: pointOut(frame, stands), onSecond: pointOut(frame, wall) };
};

interface Looking {
  readonly within: number;
  /** A place of the other piece in the frame of the one with the hollows. */
  readonly seen: (at: Vector) => Vector;
}

const MEET: Nearest = { kind: "meet" };
const BEYOND: Nearest = { kind: "beyond" };

/** Both places in the frame of the piece with the hollows. */
const clearIn = (
  { filling }: ConvexPiece,
  other: ConvexPiece,
  { within, seen }: Looking,
): Nearest => {
  if (filling.kind !== "outline" || filling.hollows.length === 0) return MEET;
  // One corner tells of most hollows that they are not the one: no list of all is made for those.
  const first = seen(cornerOf(other, 0));
  const around = filling.hollows.filter((each) => isInExtent(extentOf(each), first));
  if (around.length === 0) return MEET;
  const corners = Array.from({ length: other.corners.length / 3 }, (_, at) =>
    seen(cornerOf(other, at)),
  );
  const box = extentAround(corners);
  for (const hollow of around) {
    // Boxes first: an exact gap to a wall of arcs takes as long as all the rest of a step.
    if (
      boxedEdgesOf(hollow).every((edge) => extentGap(box, edge.box) > within) &&
      containsPoint(hollow, flat(first))
    )
      return BEYOND;
    if (corners.every((at) => containsPoint(hollow, flat(at)))) return clearOf(corners, hollow);
  }
  return MEET;
};

/** Where its outline comes to the wall it is not clear of it: a hollow that is not convex may come in between two corners. */
const clearOf = (corners: readonly Vector[], hollow: Contour): Nearest => {
  const hull = convexHull(corners.map(flat));
  // Thinner than any hull: its corners are in the hollow, and that is all that is known.
  if (hull.length < 3) return MEET;
  const { gap, from, to } = contourDistance(loop(hull.map(({ x, y }) => vertex(x, y))), hollow);
  if (gap <= 0) return MEET;
  const height = corners.reduce((sum, { z }) => sum + z, 0) / corners.length;
  return {
    kind: "apart",
    gap,
    onFirst: vector(to.x, to.y, height),
    onSecond: vector(from.x, from.y, height),
  };
};

const extentAround = (corners: readonly Vector[]): Extent => {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of corners) {
    [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
    [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
  }
  return extent(minX, minY, maxX, maxY);
};

const extentOf = (hollow: Contour): Extent => {
  const known = EXTENTS.get(hollow) ?? contourExtent(hollow);
  EXTENTS.set(hollow, known);
  return known;
};

/** A drag asks for them at every step. */
const EXTENTS = new WeakMap<Contour, Extent>();

const isInExtent = ({ minX, minY, maxX, maxY }: Extent, { x, y }: Vector): boolean =>
  x > minX && x < maxX && y > minY && y < maxY;

const flat = ({ x, y }: Vector): Point => point(mm(x), mm(y));

const cornerOf = ({ corners }: ConvexPiece, at: number): Vector =>
  vector(corners[3 * at]!, corners[3 * at + 1]!, corners[3 * at + 2]!);
