// Measuring between two places of a picture: a click is pulled to the nearest corner, else to the nearest line; the pair
// gives its distance and what of it lies forward, to the left and up.

import { minus, spaceDistance, type Vector, vector } from "../../src/geometry/space/vector.ts";
import { nearestOnStretch } from "./space-point.ts";

export interface Snapped {
  readonly at: Vector;
  readonly kind: "corner" | "line" | "face";
}

/**
 * `lines`: two points each, x y z. `within`: how far from the point a corner or a line still pulls; corners go first.
 */
export const snapped = (hit: Vector, lines: ArrayLike<number>, within: number): Snapped => {
  let corner: Vector | null = null;
  let [cornerGap, lineGap] = [within, within];
  let onLine: Vector | null = null;
  for (let at = 0; at + 5 < lines.length; at += 6) {
    const a = vector(lines[at]!, lines[at + 1]!, lines[at + 2]!);
    const b = vector(lines[at + 3]!, lines[at + 4]!, lines[at + 5]!);
    for (const end of [a, b]) {
      const gap = spaceDistance(end, hit);
      if (gap <= cornerGap) [corner, cornerGap] = [end, gap];
    }
    const near = nearestOnStretch(a, b, hit);
    const gap = spaceDistance(near, hit);
    if (gap <= lineGap) [onLine, lineGap] = [near, gap];
  }
  if (corner !== null) return { at: corner, kind: "corner" };
  return onLine === null ? { at: hit, kind: "face" } : { at: onLine, kind: "line" };
};

export interface MeasuredPair {
  readonly distance: number;
  /** In console axes, without sign. */
  readonly forward: number;
  readonly aside: number;
  readonly up: number;
}

export const measuredPair = (a: Vector, b: Vector): MeasuredPair => {
  const { x, y, z } = minus(b, a);
  return {
    distance: spaceDistance(a, b),
    forward: Math.abs(x),
    aside: Math.abs(y),
    up: Math.abs(z),
  };
};
