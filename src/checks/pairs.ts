// Pairs of things whose boxes come near each other: a sweep along x, so that a large panel costs little more than a small one.

import { type Extent, grownExtent } from "../geometry/extent.ts";

export interface Boxed<Thing> {
  readonly thing: Thing;
  readonly box: Extent;
}

/** Near pairs that one thing is looked at in: in a heap of things on one spot the first few say all there is to say. */
const MOST_NEIGHBOURS = 64;

/** Calls `visit` once for each pair whose boxes lie within `reach` of each other. */
export const eachNearPair = <Thing>(
  things: readonly Boxed<Thing>[],
  reach: number,
  visit: (a: Thing, b: Thing) => void,
): void => {
  const sorted = things.toSorted((a, b) => a.box.minX - b.box.minX);
  sorted.forEach((first, index) => {
    const zone = grownExtent(first.box, reach);
    let visited = 0;
    for (let next = index + 1; next < sorted.length; next += 1) {
      const second = sorted[next];
      if (second === undefined || second.box.minX > zone.maxX) break;
      if (second.box.minY > zone.maxY || second.box.maxY < zone.minY) continue;
      visit(first.thing, second.thing);
      visited += 1;
      if (visited === MOST_NEIGHBOURS) break;
    }
  });
};
