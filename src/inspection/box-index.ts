// Finds, among expected lines, the one whose box is most like a given box. Sorted by left edge, so that a search looks
// at near ones first: a legend-heavy panel asks this thousands of times.

import type { Extent } from "../geometry/extent.ts";

export interface Boxed {
  readonly box: Extent;
}

export interface Likeness<Thing> {
  readonly thing: Thing;
  /** Sum of what the four sides differ by. */
  readonly misfit: number;
}

export const boxMisfit = (a: Extent, b: Extent): number =>
  Math.abs(a.minX - b.minX) +
  Math.abs(a.minY - b.minY) +
  Math.abs(a.maxX - b.maxX) +
  Math.abs(a.maxY - b.maxY);

/** A finder over `things`; null where there are none. */
export const likestBox = <Thing extends Boxed>(
  things: readonly Thing[],
): ((box: Extent) => Likeness<Thing> | null) => {
  const sorted = things.toSorted((a, b) => a.box.minX - b.box.minX);
  return (box) => {
    const start = firstFrom(sorted, box.minX);
    const right = nearestAlong(sorted, box, { start, step: 1, best: null });
    return nearestAlong(sorted, box, { start: start - 1, step: -1, best: right });
  };
};

const nearestAlong = <Thing extends Boxed>(
  sorted: readonly Thing[],
  box: Extent,
  from: { readonly start: number; readonly step: 1 | -1; readonly best: Likeness<Thing> | null },
): Likeness<Thing> | null => {
  let best = from.best;
  for (let at = from.start; ; at += from.step) {
    const thing = sorted[at];
    if (thing === undefined) return best;
    // Further along, the left edges alone differ by more than the best so far.
    if (best !== null && Math.abs(thing.box.minX - box.minX) >= best.misfit) return best;
    const misfit = boxMisfit(thing.box, box);
    if (best === null || misfit < best.misfit) best = { thing, misfit };
  }
};

const firstFrom = (sorted: readonly Boxed[], left: number): number => {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle]?.box.minX ?? 0) < left) low = middle + 1;
    else high = middle;
  }
  return low;
};
