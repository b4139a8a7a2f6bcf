// How much material a pocket leaves to the edge of its part.

import { containsContour } from "../../geometry/containment.ts";
import type { Contour } from "../../geometry/contour.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import type { Pocket } from "./pockets.ts";

/** 0 where the pocket breaks out of the outline; Infinity where it does not meet the part at all. */
export const edgeRoom = ({ regions }: Pocket, outline: Contour): Mm => {
  const rooms = regions.map((region) => {
    const { gap, overlaps } = contourDistance(region.outline, outline);
    if (containsContour(outline, region.outline)) return gap;
    return overlaps ? 0 : Number.POSITIVE_INFINITY;
  });
  return mm(Math.min(...rooms));
};
