// Edges to which distances are taken many times: a letter's outline is asked once for every corner drawn along it. Keeps each
// edge's box, looks first at the edge that was nearest last time, and passes over those whose box is further off.

import type { Point } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { distanceToEdge, edgeExtent } from "./edge.ts";
import type { Edge } from "./read-file.ts";

/** A function that gives the distance from a place to the nearest of `edges`. */
export const distanceTo = (edges: readonly Edge[]): ((place: Point) => number) => {
  const boxes = boxesOf(edges);
  let last = 0;
  return (place) => {
    let nearest = Number.POSITIVE_INFINITY;
    if (edges[last] !== undefined) nearest = distanceToEdge(edges[last]!, place);
    const start = last;
    for (let index = 0; index < edges.length; index += 1) {
      if (index === start || isFurther(boxes[index]!, place, nearest)) continue;
      const distance = distanceToEdge(edges[index]!, place);
      if (distance >= nearest) continue;
      nearest = distance;
      last = index;
    }
    return nearest;
  };
};

/** Kept by identity: an outline is asked by each loop of its letter and by each format of its file. */
const boxesOf = (edges: readonly Edge[]): readonly Extent[] => {
  const known = kept.get(edges);
  if (known !== undefined) return known;
  const boxes = edges.map(edgeExtent);
  kept.set(edges, boxes);
  return boxes;
};

const kept = new WeakMap<readonly Edge[], readonly Extent[]>();

const isFurther = (box: Extent, place: Point, distance: number): boolean =>
  box.minX - place.x > distance ||
  place.x - box.maxX > distance ||
  box.minY - place.y > distance ||
  place.y - box.maxY > distance;
