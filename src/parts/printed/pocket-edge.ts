// How much material a pocket leaves to the edge of its part.

import { containsContour, containsPoint } from "../../geometry/containment.ts";
import type { Contour } from "../../geometry/contour.ts";
import { contourDistance, pointToContour } from "../../geometry/distance.ts";
import { flattened } from "../../geometry/flatten.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { Pocket } from "./pockets.ts";

/** Negative where the pocket breaks out: how far beyond the outline it reaches. Infinity where it does not meet the part. */
export const edgeRoom = ({ regions }: Pocket, outline: Contour): Mm => {
  const rooms = regions.map((region) => {
    const { gap, overlaps } = contourDistance(region.outline, outline);
    if (containsContour(outline, region.outline)) return gap;
    return overlaps ? -reachBeyond(region.outline, outline) : Number.POSITIVE_INFINITY;
  });
  return mm(Math.min(...rooms));
};

/** Of the pocket's own outline, the place that lies farthest outside; arcs as chords that leave them by no more than two places are one. */
const reachBeyond = (pocket: Contour, outline: Contour): number =>
  flattened(pocket, samePlace)
    .filter((at) => !containsPoint(outline, at))
    .reduce((most, at) => Math.max(most, pointToContour(at, outline).gap), 0);
