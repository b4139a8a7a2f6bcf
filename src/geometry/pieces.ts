// An edge cut into pieces wherever another outline meets it: between two cuts the edge is inside that outline,
// outside it, or along it, so that one point a piece decides.

import { type BoxedEdge, boxedEdgesOf } from "./boxed-edges.ts";
import type { Contour, Point } from "./contour.ts";
import { fractionAlong, pointAlong } from "./edge.ts";
import { distanceToEdge } from "./edge-distance.ts";
import { extentGap } from "./extent.ts";
import { meetingsOf } from "./meeting.ts";
import { samePlace } from "./tolerance.ts";

/** The middle of every piece of `edge` between its meetings with `other`. */
export const pieceMiddles = (boxed: BoxedEdge, other: Contour): readonly Point[] => {
  const cuts = cutsOf(boxed, other).sort((a, b) => a - b);
  const middles: Point[] = [];
  let start = 0;
  for (const end of [...cuts, 1]) {
    if (end > start) middles.push(pointAlong(boxed.edge, (start + end) / 2));
    start = Math.max(start, end);
  }
  return middles;
};

/** Within `samePlace` of the outline. */
export const isOnBoundary = (contour: Contour, at: Point): boolean =>
  boxedEdgesOf(contour).some(
    ({ edge, box }) =>
      at.x >= box.minX - samePlace &&
      at.x <= box.maxX + samePlace &&
      at.y >= box.minY - samePlace &&
      at.y <= box.maxY + samePlace &&
      distanceToEdge(edge, at.x, at.y) <= samePlace,
  );

const cutsOf = ({ edge, box }: BoxedEdge, other: Contour): number[] => {
  const cuts: number[] = [];
  for (const facing of boxedEdgesOf(other)) {
    if (extentGap(box, facing.box) > samePlace) continue;
    for (const at of [...meetingsOf(edge, facing.edge), facing.edge.from]) {
      if (distanceToEdge(edge, at.x, at.y) > samePlace) continue;
      const fraction = fractionAlong(edge, at);
      if (fraction > 0 && fraction < 1) cuts.push(fraction);
    }
  }
  return cuts;
};
