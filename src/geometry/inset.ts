// Filled shapes drawn in by a distance all round, so that a spot of that radius run along the new outline burns the
// shape itself. Arcs stay arcs. What is thinner than twice the distance vanishes, and a shape may fall apart.

import { difference } from "./boolean.ts";
import { type Contour, circle, type Region } from "./contour.ts";
import { invariant } from "./invariant.ts";
import { offsetLoop } from "./offset-loop.ts";
import { holeFaultsOf } from "./simple.ts";
import { thickOutline } from "./thick-outline.ts";
import { samePlace } from "./tolerance.ts";

/** `distance` 0 or more. Places of the result keep exactly that distance from the shapes' outlines, round outside corners of holes. */
export const insetRegions = (regions: readonly Region[], distance: number): readonly Region[] => {
  invariant(distance >= 0, "an inset is not negative");
  if (distance === 0) return regions;
  return regions.flatMap((region) => movedRegion(region, distance) ?? wornRegion(region, distance));
};

/** Outline and holes moved one by one: quick, and right wherever they come out whole and apart. Else null. */
const movedRegion = (region: Region, distance: number): readonly Region[] | null => {
  const outline = movedContour(region.outline, -distance);
  if (outline === null) return isTooSmall(region.outline, distance) ? [] : null;
  const holes = region.holes.map((hole) => movedContour(hole, distance));
  const whole = holes.filter((hole) => hole !== null);
  if (whole.length < holes.length) return null;
  const moved = { outline, holes: whole };
  return holeFaultsOf(moved).length === 0 ? [moved] : null;
};

const movedContour = (contour: Contour, distance: number): Contour | null => {
  if (contour.kind === "circle") {
    const radius = contour.radius + distance;
    return radius > samePlace ? circle(contour.centre, radius) : null;
  }
  const moved = offsetLoop(contour, distance, { join: "round", lostEdges: "left-out" });
  return moved.kind === "offset" ? moved.loop : null;
};

const isTooSmall = (contour: Contour, distance: number): boolean =>
  contour.kind === "circle" && contour.radius <= distance + samePlace;

/** The region less everything within the distance of its outlines: right for every shape, and slower. */
const wornRegion = (region: Region, distance: number): readonly Region[] =>
  difference(
    [region],
    [region.outline, ...region.holes].flatMap((contour) => thickOutline(contour, distance)),
  );
