// Areas grown by a distance all round, gaps narrower than a distance filled, and slips thinner than a distance removed.
// Arcs stay arcs. Nothing is refused: where an outline can't be moved whole, its edges are thickened instead.

import { unionRegions } from "../../geometry/boolean.ts";
import type { Contour, Region } from "../../geometry/contour.ts";
import { insetRegions } from "../../geometry/inset.ts";
import { offsetContour } from "../../geometry/offset.ts";
import { thickOutline } from "../../geometry/thick-outline.ts";
import { mergedRegion } from "./merged-edges.ts";

/** Every place within `distance` of an area; areas that come to meet are one. */
export const grownRegions = (regions: readonly Region[], distance: number): readonly Region[] =>
  distance === 0
    ? unionRegions(regions)
    : unionRegions(regions.flatMap((region) => grownRegion(region, distance))).map(mergedRegion);

/** Gaps narrower than `width` between areas, and in them, become area. */
export const closedRegions = (regions: readonly Region[], width: number): readonly Region[] =>
  insetRegions(grownRegions(regions, width / 2), width / 2).map(mergedRegion);

/** What is thinner than `width` goes; the rest keeps its outline, with corners rounded by half of that. */
export const openedRegions = (regions: readonly Region[], width: number): readonly Region[] =>
  grownRegions(insetRegions(regions, width / 2).map(mergedRegion), width / 2);

export const plainRegion = (outline: Contour): Region => ({ outline, holes: [] });

const grownRegion = (region: Region, distance: number): readonly Region[] => {
  const { outline, holes } = region;
  const moved = offsetContour(outline, distance);
  if (holes.length === 0 && moved.kind === "offset") return [plainRegion(moved.contour)];
  const thick = [outline, ...holes].flatMap((contour) => thickOutline(contour, distance));
  return [region, ...thick.map(plainRegion)];
};
