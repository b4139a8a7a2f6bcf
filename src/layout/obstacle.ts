// What a fixing keeps clear of: a hole, a body, a letter's box, the ring of a border. Asked for its distance from a point.

import { containsPoint } from "../geometry/containment.ts";
import type { Contour, Point, Region } from "../geometry/contour.ts";
import { pointToContour } from "../geometry/distance.ts";
import type { Extent } from "../geometry/extent.ts";
import { madeOnce } from "../geometry/made-once.ts";
import { contourExtent } from "../geometry/measure.ts";

export interface Obstacle {
  readonly box: Extent;
  /** Distance from a point to what is solid; 0 within it. */
  readonly gapTo: (at: Point) => number;
}

export const contourObstacle = madeOnce(
  (contour: Contour): Obstacle => ({
    box: contourExtent(contour),
    gapTo: (at) => (containsPoint(contour, at) ? 0 : pointToContour(at, contour).gap),
  }),
);

/** Free inside its holes: a fixing may stand within a border. */
export const regionObstacle = (region: Region): Obstacle => ({
  box: contourExtent(region.outline),
  gapTo: (at) => {
    const isOutside = !containsPoint(region.outline, at);
    if (!(isOutside || region.holes.some((hole) => containsPoint(hole, at)))) return 0;
    const gaps = [region.outline, ...region.holes].map((edge) => pointToContour(at, edge).gap);
    return Math.min(...gaps);
  },
});

export const boxObstacle = madeOnce(
  (box: Extent): Obstacle => ({
    box,
    gapTo: (at) => {
      const across = Math.max(0, box.minX - at.x, at.x - box.maxX);
      const along = Math.max(0, box.minY - at.y, at.y - box.maxY);
      return Math.sqrt(across * across + along * along);
    },
  }),
);
