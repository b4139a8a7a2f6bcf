// Filled shapes drawn in by a distance all round, so that a spot of that radius run along the new outline burns the
// shape itself. Arcs stay arcs. What is thinner than twice the distance vanishes, and a shape may fall apart.

import { difference } from "./boolean.ts";
import { type Contour, circle, type Region } from "./contour.ts";
import { invariant } from "./invariant.ts";
import { offsetLoop } from "./offset-loop.ts";
import { holeFaultsOf } from "./simple.ts";
import { thickOutline } from "./thick-outline.ts";
import { samePlace } from "./tolerance.ts";

/** `distance` 0 or more. Every place of the result lies at least that far from the shapes' outlines. */
export const insetRegions = (regions: readonly Region[], distance: number): readonly Region[] => {
  invariant(distance >= 0, "an inset is not negative");
  return distance === 0 ? regions : regions.flatMap((region) => insetRegion(region, distance));
};

/** The outline drawn in, less every hole grown: each moved as a loop where it comes out whole, else worn away. */
const insetRegion = (region: Region, distance: number): readonly Region[] => {
  const outline = movedContour(region.outline, -distance);
  if (outline === null && region.outline.kind === "circle") return [];
  const holes = region.holes.map((hole) => movedContour(hole, distance));
  const whole = holes.filter((hole) => hole !== null);
  if (outline !== null && whole.length === holes.length) {
    const moved = { outline, holes: whole };
    if (holeFaultsOf(moved).length === 0) return [moved];
  }
  const worn = outline === null ? thickOutline(region.outline, distance) : [];
  const cutters = region.holes.flatMap(
    (hole, index) => holes[index] ?? [hole, ...thickOutline(hole, distance)],
  );
  return difference([{ outline: outline ?? region.outline, holes: [] }], [...worn, ...cutters]);
};

const movedContour = (contour: Contour, distance: number): Contour | null => {
  if (contour.kind === "circle") {
    const radius = contour.radius + distance;
    return radius > samePlace ? circle(contour.centre, radius) : null;
  }
  const moved = offsetLoop(contour, distance, { join: "round", lostEdges: "left-out" });
  return moved.kind === "offset" ? moved.loop : null;
};
