// Polygons of one layer, run with the material on their left, on the whole steps of the mesh grid: every test on them is
// exact. Two polygons with one name are one polygon run the same way.

import type { Point } from "../contour.ts";
import { meshGrid } from "./solid-tolerance.ts";

/** A corner in steps of the mesh grid. */
export interface Step {
  readonly x: number;
  readonly y: number;
}

export interface StackedPolygon {
  readonly corners: readonly Step[];
  readonly name: string;
  readonly low: Step;
  readonly high: Step;
}

export const stackedPolygon = (points: readonly Point[]): StackedPolygon => {
  const corners = points.map(({ x, y }) => ({
    x: Math.round(x / meshGrid),
    y: Math.round(y / meshGrid),
  }));
  const first = corners.reduce(
    (least, at, index) => (isBefore(at, corners[least]!) ? index : least),
    0,
  );
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  return {
    corners,
    name: [...corners.slice(first), ...corners.slice(0, first)]
      .map(({ x, y }) => `${x},${y}`)
      .join(" "),
    low: { x: Math.min(...xs), y: Math.min(...ys) },
    high: { x: Math.max(...xs), y: Math.max(...ys) },
  };
};

/** Four numbers a side: least x and y, most x and y. */
export const sideBoxes = ({ corners }: StackedPolygon): Float64Array => {
  const boxes = new Float64Array(4 * corners.length);
  for (const [side, from] of corners.entries()) {
    const to = corners[(side + 1) % corners.length]!;
    boxes.set(
      [
        ...[Math.min(from.x, to.x), Math.min(from.y, to.y)],
        ...[Math.max(from.x, to.x), Math.max(from.y, to.y)],
      ],
      4 * side,
    );
  }
  return boxes;
};

const isBefore = (a: Step, b: Step): boolean => a.x < b.x || (a.x === b.x && a.y < b.y);

/** One number for a corner; corners lie within 8 m of the origin. */
export const stepName = ({ x, y }: Step): number => (x + halfRange) * 2 * halfRange + y + halfRange;

const halfRange = 2 ** 23;

export const isSameStep = (a: Step, b: Step): boolean => a.x === b.x && a.y === b.y;

/** Positive where c lies left of the way from a to b; 0 on its line. Exact for steps. */
export const sideOf = (a: Step, b: Step, c: Step): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Twice the area, positive where the corners run counter-clockwise. */
export const twiceArea = (corners: readonly Step[]): number => {
  let twice = 0;
  for (const [index, from] of corners.entries()) {
    const to = corners[(index + 1) % corners.length]!;
    twice += from.x * to.y - to.x * from.y;
  }
  return twice;
};

/** Inside an odd number of the polygons: in the material of regions with holes. Not asked of places on an edge. */
export const isInside = (
  polygons: readonly Pick<StackedPolygon, "corners">[],
  at: Step,
): boolean => {
  let inside = false;
  for (const { corners } of polygons) {
    let from = corners[corners.length - 1]!;
    for (const to of corners) {
      if (from.y > at.y !== to.y > at.y && sideOf(from, to, at) > 0 === to.y > from.y)
        inside = !inside;
      from = to;
    }
  }
  return inside;
};
