// The hull of points in a plane: the corners of the smallest bulging outline round all of them, counter-clockwise.
// Takes any points, gives fewer than three where all lie on one line.

import type { Point } from "../geometry/contour.ts";
import { samePlace } from "../geometry/tolerance.ts";

/** Two chains from left to right, below and above (Andrew 1979, "Another efficient algorithm for convex hulls in two dimensions"). */
export const hull = (points: readonly Point[]): readonly Point[] => {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const apart = sorted.filter((at, index) => {
    const before = sorted[index - 1];
    return before === undefined || at.x !== before.x || at.y !== before.y;
  });
  const below = chain(apart);
  const above = chain(apart.toReversed());
  return [...below.slice(0, -1), ...above.slice(0, -1)];
};

const chain = (points: readonly Point[]): readonly Point[] => {
  const kept: Point[] = [];
  for (const at of points) {
    while (kept.length >= 2 && !turnsLeft(kept, at)) kept.pop();
    kept.push(at);
  }
  return kept;
};

const turnsLeft = (kept: readonly Point[], at: Point): boolean => {
  const [first, second] = kept.slice(-2);
  if (first === undefined || second === undefined) return true;
  const width = second.x - first.x;
  const height = second.y - first.y;
  return width * (at.y - first.y) - height * (at.x - first.x) > samePlace;
};
