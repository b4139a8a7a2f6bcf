// Where a section runs through openings: the stretches of y that a layer is open over. The cut is stepped: it passes
// through the axis of every component of its column, and through whatever else lies on the plane itself.

import type { Contour } from "../geometry/contour.ts";
import { flattened } from "../geometry/flatten.ts";
import { contourExtent } from "../geometry/measure.ts";
import type { LayerLayout } from "../layout/panel-layout.ts";
import type { SectionPlane } from "./section-planes.ts";

export interface Stretch {
  readonly low: number;
  readonly high: number;
}

/** Chords of an opening's arcs: ten times finer than a pen. */
const CHORD = 0.01;

/** Rising, and apart from each other. */
export const openStretches = (layer: LayerLayout, plane: SectionPlane): readonly Stretch[] => {
  const axes = new Map(plane.components.map(({ id, at }) => [id, at.x]));
  const found = layer.cutOuts.flatMap(({ owner, contour }) =>
    crossing(contour, axes.get(owner) ?? plane.x),
  );
  return merged(found.toSorted((a, b) => a.low - b.low));
};

/** What is left of a length between the open stretches. */
export const solidStretches = (whole: Stretch, open: readonly Stretch[]): readonly Stretch[] => {
  const solid: Stretch[] = [];
  let from = whole.low;
  for (const { low, high } of open) {
    if (low > from) solid.push({ low: from, high: Math.min(low, whole.high) });
    from = Math.max(from, high);
  }
  if (from < whole.high) solid.push({ low: from, high: whole.high });
  return solid;
};

const crossing = (contour: Contour, x: number): readonly Stretch[] => {
  if (contour.kind === "circle") {
    const away = x - contour.centre.x;
    if (Math.abs(away) >= contour.radius) return [];
    const half = Math.sqrt(contour.radius * contour.radius - away * away);
    return [{ low: contour.centre.y - half, high: contour.centre.y + half }];
  }
  const box = contourExtent(contour);
  if (x <= box.minX || x >= box.maxX) return [];
  const corners = flattened(contour, CHORD);
  const heights: number[] = [];
  for (const [index, from] of corners.entries()) {
    const to = corners[(index + 1) % corners.length]!;
    // Half-open, so that a corner on the plane counts once.
    if (from.x <= x === to.x <= x) continue;
    heights.push(from.y + ((x - from.x) / (to.x - from.x)) * (to.y - from.y));
  }
  const sorted = heights.toSorted((a, b) => a - b);
  return sorted.flatMap((low, index) => {
    const high = sorted[index + 1];
    return index % 2 === 0 && high !== undefined ? [{ low, high }] : [];
  });
};

const merged = (sorted: readonly Stretch[]): readonly Stretch[] => {
  const apart: Stretch[] = [];
  for (const stretch of sorted) {
    const last = apart.at(-1);
    if (last === undefined || stretch.low > last.high) apart.push(stretch);
    else apart[apart.length - 1] = { low: last.low, high: Math.max(last.high, stretch.high) };
  }
  return apart;
};
