// Edges to which distances are taken many times: a letter's outline is asked once for every corner drawn along it. Keeps each
// edge's box, looks first at the edge that was nearest last time, and passes over those whose box is further off.

import type { Point } from "../geometry/contour.ts";
import { distanceToEdge, edgeExtent } from "./edge.ts";
import type { Edge } from "./read-file.ts";

/** A function that gives the distance from a place to the nearest of `edges`. */
export const distanceTo = (edges: readonly Edge[]): ((place: Point) => number) => {
  const sides = sidesOf(edges);
  let last = 0;
  return (place) => {
    const { x, y } = place;
    let nearest = Number.POSITIVE_INFINITY;
    if (edges[last] !== undefined) nearest = distanceToEdge(edges[last]!, place);
    const start = last;
    for (let index = 0, side = 0; index < edges.length; index += 1, side += SIDES) {
      const isFurther =
        sides[side]! - x > nearest ||
        x - sides[side + 1]! > nearest ||
        sides[side + 2]! - y > nearest ||
        y - sides[side + 3]! > nearest;
      if (isFurther || index === start) continue;
      const distance = distanceToEdge(edges[index]!, place);
      if (distance >= nearest) continue;
      nearest = distance;
      last = index;
    }
    return nearest;
  };
};

/** Left, right, low, high. */
const SIDES = 4;

/** The boxes of all edges in one row. Kept by identity: an outline is asked by each loop of its letter and by each format. */
const sidesOf = (edges: readonly Edge[]): Float64Array => {
  const known = kept.get(edges);
  if (known !== undefined) return known;
  const sides = new Float64Array(SIDES * edges.length);
  for (const [index, edge] of edges.entries()) {
    const { minX, maxX, minY, maxY } = edgeExtent(edge);
    sides.set([minX, maxX, minY, maxY], SIDES * index);
  }
  kept.set(edges, sides);
  return sides;
};

const kept = new WeakMap<readonly Edge[], Float64Array>();
