// Measuring between two places of a picture: a click is pulled to the nearest corner, else to the nearest edge, and from a round
// edge on to its axis; the pair gives its distance and what of it lies forward, to the left and up.

import { minus, spaceDistance, type Vector, vector } from "../../src/geometry/space/vector.ts";
import { roundEdge } from "./round-edge.ts";
import { nearestOnStretch } from "./space-point.ts";

export type Snapped =
  | { readonly kind: "corner" | "edge" | "face"; readonly at: Vector }
  /** The middle of a round edge, so many mm across. */
  | { readonly kind: "axis"; readonly at: Vector; readonly across: number };

/**
 * `lines`: two points each, x y z. `within`: how far from the point a corner or an edge still pulls; corners go first. What is
 * drawn of a circle has no corners.
 */
export const snapped = (hit: Vector, lines: ArrayLike<number>, within: number): Snapped => {
  let corner: Vector | null = null;
  let [cornerGap, lineGap] = [within, within];
  let onLine: Vector | null = null;
  let nearest = 0;
  for (let at = 0; at + 5 < lines.length; at += 6) {
    const a = vector(lines[at]!, lines[at + 1]!, lines[at + 2]!);
    const b = vector(lines[at + 3]!, lines[at + 4]!, lines[at + 5]!);
    for (const end of [a, b]) {
      const gap = spaceDistance(end, hit);
      if (gap <= cornerGap) [corner, cornerGap] = [end, gap];
    }
    const near = nearestOnStretch(a, b, hit);
    const gap = spaceDistance(near, hit);
    if (gap <= lineGap) [onLine, lineGap, nearest] = [near, gap, at];
  }
  if (onLine === null) return { at: hit, kind: "face" };
  const ring = roundEdge(lines, nearest);
  if (ring !== null) return { kind: "axis", ...ring };
  return corner === null ? { at: onLine, kind: "edge" } : { at: corner, kind: "corner" };
};

/** What was picked, and of what. */
export interface MeasuredPlace {
  readonly at: Snapped;
  readonly thing: string;
}

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
