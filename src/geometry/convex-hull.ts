// The hull of points in a plane: the corners of the smallest bulging outline round all of them, counter-clockwise.
// Takes any points, gives fewer than three where all lie on one line.

import type { Point } from "./contour.ts";

/**
 * Two chains from left to right, below and above (Andrew, "Another efficient algorithm for convex hulls in two dimensions",
 * Information Processing Letters 9, 1979). A corner that turns by no more than `leastTurn`, twice the area of the triangle
 * with its neighbours in mm², is left out: 0 keeps every corner that turns at all.
 */
export const convexHull = (points: readonly Point[], leastTurn = 0): readonly Point[] => {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const apart = sorted.filter((at, index) => {
    const before = sorted[index - 1];
    return before === undefined || at.x !== before.x || at.y !== before.y;
  });
  return [...chain(apart, leastTurn), ...chain(apart.toReversed(), leastTurn)];
};

/** Without its last corner, with which the other chain begins. */
const chain = (points: readonly Point[], leastTurn: number): readonly Point[] => {
  const kept: Point[] = [];
  for (const at of points) {
    while (kept.length >= 2 && turn(kept.at(-2)!, kept.at(-1)!, at) <= leastTurn) kept.pop();
    kept.push(at);
  }
  return kept.slice(0, -1);
};

/** Twice the area of a triangle, positive where it turns to the left. */
export const turn = (a: Point, b: Point, c: Point): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
