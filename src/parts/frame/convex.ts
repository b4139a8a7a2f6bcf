// Do two convex outlines of the profile share more than an edge? By the axes that could part them: the normals of their sides.

import type { Point } from "../../geometry/contour.ts";
import { samePlace } from "../../geometry/tolerance.ts";

export const convexMeet = (a: readonly Point[], b: readonly Point[]): boolean =>
  !hasParting(a, b) && !hasParting(b, a);

const hasParting = (a: readonly Point[], b: readonly Point[]): boolean =>
  a.some((from, index) => {
    const to = a[(index + 1) % a.length]!;
    const normal = { x: to.y - from.y, y: from.x - to.x };
    const size = Math.sqrt(normal.x * normal.x + normal.y * normal.y);
    const [low, high] = reach(a, normal, size);
    const [least, most] = reach(b, normal, size);
    return least >= high - samePlace || most <= low + samePlace;
  });

const reach = (
  corners: readonly Point[],
  normal: { readonly x: number; readonly y: number },
  size: number,
): readonly [number, number] => {
  const along = corners.map(({ x, y }) => (x * normal.x + y * normal.y) / size);
  return [Math.min(...along), Math.max(...along)];
};
