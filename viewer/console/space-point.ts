// Points in space as plain triples, for what is reckoned between pointer and picture: sums, lines, nearest points.

import { cross, dot, minus, plus, scaled, type Vector } from "../../src/geometry/space/vector.ts";

export interface Ray {
  readonly from: Vector;
  /** A unit vector. */
  readonly way: Vector;
}

/** How far along a line its point nearest to a ray lies; null where the two run side by side. */
export const alongLine = (line: Ray, ray: Ray): number | null => {
  const normal = cross(line.way, ray.way);
  const size = dot(normal, normal);
  if (size < PARALLEL) return null;
  return dot(cross(minus(ray.from, line.from), ray.way), normal) / size;
};

/** Sine squared of an angle under which a hand can't tell near from far: about a third of a degree. */
const PARALLEL = 3e-5;

/** The point of a stretch that lies nearest to another point. */
export const nearestOnStretch = (from: Vector, to: Vector, point: Vector): Vector => {
  const way = minus(to, from);
  const size = dot(way, way);
  if (size === 0) return from;
  const share = Math.max(0, Math.min(1, dot(minus(point, from), way) / size));
  return plus(from, scaled(way, share));
};

/** The module at which a dragged panel lies: whole ones, counted from where it stood. */
export const pulledModule = (
  from: number,
  dragged: { readonly by: number; readonly pitch: number },
): number => Math.max(0, from + Math.round(dragged.by / dragged.pitch));

/** Whether the way from one point to another goes through a box that is parallel to the axes. */
export const crossesBox = (
  from: Vector,
  to: Vector,
  box: { readonly low: Vector; readonly high: Vector },
): boolean => {
  let [enters, leaves] = [0, 1];
  for (const axis of ["x", "y", "z"] as const) {
    const way = to[axis] - from[axis];
    const [a, b] = [box.low[axis] - from[axis], box.high[axis] - from[axis]];
    if (way === 0) {
      if (a > 0 || b < 0) return false;
      continue;
    }
    enters = Math.max(enters, Math.min(a / way, b / way));
    leaves = Math.min(leaves, Math.max(a / way, b / way));
  }
  return enters < leaves;
};
