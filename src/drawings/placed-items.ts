// Painted things moved and turned on their sheet as one.

import { type Placement, placedContour, placedPath, placedRegion } from "../geometry/transform.ts";
import type { DrawingItem } from "./drawing.ts";

export const placedItems = (items: readonly DrawingItem[], at: Placement): readonly DrawingItem[] =>
  items.map((item) => placedItem(item, at));

const placedItem = (item: DrawingItem, at: Placement): DrawingItem => {
  switch (item.kind) {
    case "fill":
      return { ...item, regions: item.regions.map((region) => placedRegion(region, at)) };
    case "outline":
      return { ...item, contours: item.contours.map((contour) => placedContour(contour, at)) };
    case "stroke":
      return { ...item, paths: item.paths.map((path) => placedPath(path, at)) };
  }
};
