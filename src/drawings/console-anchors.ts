// Where a name's line may point: a place of the thing that nothing painted later covers. Takes what was painted, in order;
// gives a place a name, and none for what is wholly hidden.

import { containsPoint } from "../geometry/containment.ts";
import { type Point, point, type Region } from "../geometry/contour.ts";
import { type Extent, extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";

export interface PaintedArea {
  readonly name: string;
  readonly regions: readonly Region[];
  /** Filled: what lies under it is not seen. */
  readonly isFilled: boolean;
}

export const visibleAnchors = (painted: readonly PaintedArea[]): ReadonlyMap<string, Point> => {
  const areas = painted.flatMap(({ name, regions, isFilled }, order) =>
    regions.map((region): Area => {
      const box = contourExtent(region.outline);
      return { name, region, isFilled, order, box };
    }),
  );
  const covers = areas.filter(({ isFilled }) => isFilled);
  const anchors = new Map<string, Point>();
  // The largest area of a thing comes first: a line that ends on a panel is clearer than one on its screw.
  for (const area of areas.toSorted((a, b) => sizeOf(b.box) - sizeOf(a.box) || a.order - b.order)) {
    if (anchors.has(area.name)) continue;
    const later = covers.filter(({ name, order }) => order > area.order && name !== area.name);
    const free = places(area.box).find(
      (at) => isWithin(area, at) && !later.some((cover) => isWithin(cover, at)),
    );
    if (free !== undefined) anchors.set(area.name, free);
  }
  return anchors;
};

interface Area {
  readonly name: string;
  readonly region: Region;
  readonly isFilled: boolean;
  readonly order: number;
  readonly box: Extent;
}

const sizeOf = (box: Extent): number => extentWidth(box) * extentHeight(box);

const isWithin = ({ region, box }: Area, at: Point): boolean =>
  at.x >= box.minX &&
  at.x <= box.maxX &&
  at.y >= box.minY &&
  at.y <= box.maxY &&
  containsPoint(region.outline, at) &&
  !region.holes.some((hole) => containsPoint(hole, at));

/** Shares of a box's sides, from the middle outward. */
const STEPS = [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92] as const;

const places = ({ minX, minY, maxX, maxY }: Extent): readonly Point[] =>
  STEPS.flatMap((up) =>
    STEPS.map((across) => point(minX + across * (maxX - minX), minY + up * (maxY - minY))),
  );
