// The polygons of a layer's regions: outlines counter-clockwise, holes clockwise, faceted for the side where something
// must pass. In a piece that is cut away the sides change places: there the air is inside the outline.

import type { Point } from "../contour.ts";
import { type ClearSide, facets } from "./facets.ts";
import type { SolidContour, SolidRegion } from "./solid.ts";

/** Whether the piece is material or is taken out of it. */
export type Use = "material" | "cutter";

export const regionPolygons = (
  { outline, holes }: SolidRegion,
  use: Use,
): readonly (readonly Point[])[] => [
  polygonOf(outline, use === "material" ? "outside" : "inside"),
  ...holes.map((hole) => polygonOf(hole, use === "material" ? "inside" : "outside").toReversed()),
];

const polygonOf = ({ contour, clearance }: SolidContour, air: ClearSide): readonly Point[] =>
  facets(contour, clearance === "clear" ? air : "none");
