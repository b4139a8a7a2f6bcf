// Whether one of many contours holds another whole: boxes in one row of numbers leave nearly all of them out, where asking each
// would take most of the time of judging an edit.

import { containsContour } from "./containment.ts";
import type { Contour } from "./contour.ts";
import { contourExtent } from "./measure.ts";
import { samePlace } from "./tolerance.ts";

export const isHeldByOne = (holders: readonly Contour[], inner: Contour): boolean => {
  const boxes = boxesOf(holders);
  const { minX, minY, maxX, maxY } = contourExtent(inner);
  for (let index = 0; index < holders.length; index += 1) {
    const at = 4 * index;
    if (minX < boxes[at]! || minY < boxes[at + 1]!) continue;
    if (maxX > boxes[at + 2]! || maxY > boxes[at + 3]!) continue;
    if (containsContour(holders[index]!, inner)) return true;
  }
  return false;
};

/** Each with more room than `containsContour` allows for, so that none is left out that it would find. */
const boxesOf = (holders: readonly Contour[]): Float64Array => {
  const known = BOXES.get(holders);
  if (known !== undefined) return known;
  const boxes = new Float64Array(4 * holders.length);
  holders.forEach((holder, index) => {
    const { minX, minY, maxX, maxY } = contourExtent(holder);
    const room = 2 * samePlace;
    boxes.set([minX - room, minY - room, maxX + room, maxY + room], 4 * index);
  });
  BOXES.set(holders, boxes);
  return boxes;
};

const BOXES = new WeakMap<readonly Contour[], Float64Array>();
