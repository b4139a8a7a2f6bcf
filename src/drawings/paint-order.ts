// In which order boards are painted, so that nearer ones cover further ones: a board that lies wholly before or behind
// another's slab is put accordingly; what a slab holds of it (a tab) does not count. Where no slab parts two, the middle decides.

import { edgesOf } from "../geometry/edges.ts";
import { degrees } from "../geometry/quantity.ts";
import { pointIn, pointOut } from "../geometry/space/frame.ts";
import {
  cross,
  dot,
  minus,
  plus,
  unitVector,
  type Vector,
  vector,
} from "../geometry/space/vector.ts";
import { direction } from "../geometry/trigonometry.ts";
import type { ShownBoard } from "./shown-board.ts";

export const paintOrder = (
  boards: readonly ShownBoard[],
  toward: Vector,
): readonly ShownBoard[] => {
  const solids = boards.map((board) => {
    const corners = cornersOf(board);
    return { board, corners, depth: depthOf(corners, toward), shadows: shadowsOf(corners, toward) };
  });
  const left = solids.toSorted((a, b) => a.depth - b.depth);
  const painted: ShownBoard[] = [];
  while (left.length > 0) {
    const waits = left.map((one) => left.filter((other) => isBefore(one, other, toward)).length);
    // Boards that hold each other in a ring have no order: the one that waits for fewest goes first.
    const [next] = left.splice(waits.indexOf(Math.min(...waits)), 1);
    if (next !== undefined) painted.push(next.board);
  }
  return painted;
};

interface Placed {
  readonly board: ShownBoard;
  readonly corners: readonly Vector[];
  readonly depth: number;
  /** What it covers of the picture along each of a fan of directions. */
  readonly shadows: readonly { readonly from: number; readonly to: number }[];
}

/** Directions in the picture along which two boards may be seen to lie apart: a fan of 15 degrees. */
const FAN = Array.from({ length: 12 }, (_, index) => direction(degrees(15 * index)));

const shadowsOf = (corners: readonly Vector[], toward: Vector): Placed["shadows"] => {
  const right = unitVector(cross(vector(0, 0, 1), toward));
  const up = cross(toward, right);
  return FAN.map(({ x, y }) => {
    const along = corners.map((corner) => x * dot(corner, right) + y * dot(corner, up));
    return { from: Math.min(...along), to: Math.max(...along) };
  });
};

/** What touches a face, or stands in a slot, by this much belongs to neither side. */
const SLACK = 1;

/** Must `other` be painted first? Two that stand before each other's planes hide nothing of one another. */
const isBefore = (one: Placed, other: Placed, toward: Vector): boolean =>
  meetInPicture(one, other) && canHide(one, other, toward) && !canHide(other, one, toward);

/** Apart as seen along any of the looks: nothing to order. */
const meetInPicture = (one: Placed, other: Placed): boolean =>
  one.shadows.every(({ from, to }, index) => {
    const shadow = other.shadows[index]!;
    return from < shadow.to && shadow.from < to;
  });

const canHide = (one: Placed, other: Placed, toward: Vector): boolean =>
  sideOf(one, other, toward) <= 0 && sideOf(other, one, toward) >= 0;

/** 1 where `board` lies on the viewer's side of the other's slab, -1 on the far side, 0 where the slab does not part them. */
const sideOf = (slab: Placed, board: Placed, toward: Vector): -1 | 0 | 1 => {
  const { part, shift } = slab.board;
  const facing = dot(part.frame.z, toward);
  const heights = board.corners.map((corner) => pointIn(part.frame, minus(corner, shift)).z);
  const isOver =
    heights.every((height) => height > -part.thickness - SLACK) &&
    heights.some((height) => height > SLACK);
  const isUnder =
    heights.every((height) => height < SLACK) &&
    heights.some((height) => height < -part.thickness - SLACK);
  if (isOver === isUnder) return 0;
  return isOver === facing > 0 ? 1 : -1;
};

/** Of its outline, on both faces. */
const cornersOf = ({ part, shift }: ShownBoard): readonly Vector[] =>
  edgesOf(part.region.outline).flatMap(({ from }) =>
    [0, -part.thickness].map((z) => plus(pointOut(part.frame, vector(from.x, from.y, z)), shift)),
  );

const depthOf = (corners: readonly Vector[], toward: Vector): number => {
  const depths = corners.map((corner) => dot(corner, toward));
  return (Math.min(...depths) + Math.max(...depths)) / 2;
};
