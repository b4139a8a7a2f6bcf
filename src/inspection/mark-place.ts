// Where a marking lies and how large it is, told from its box as drawn and the box that it must have. A stroke's box is exact. An
// engraved area may be smaller than its letters less half the spot, because a leaning foot or the point of an arrow is worn
// back further; never larger. So its place is known only as closely as its worn corners leave open.

import { type Point, point } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { wornCornerAllowance } from "./allowance.ts";

export interface MarkPlace {
  /** What it is out of place by. */
  readonly stray: Point;
  /** What its size is wrong by, the larger of both directions. */
  readonly misfit: number;
}

/** `inset`: how far within its outline an engraved area is drawn, which wears its corners; null for strokes. */
export const placeOfMark = (drawn: Extent, target: Extent, inset: number | null): MarkPlace => {
  const across = { low: drawn.minX - target.minX, high: drawn.maxX - target.maxX };
  const up = { low: drawn.minY - target.minY, high: drawn.maxY - target.maxY };
  const read = (ends: Ends): PlaceAlong =>
    inset === null ? exactPlace(ends) : wornPlace(ends, wornCornerAllowance(inset));
  const [x, y] = [read(across), read(up)];
  return { stray: point(x.stray, y.stray), misfit: Math.max(x.misfit, y.misfit) };
};

/** By how much each end of the drawn box lies above the end that it must have. */
interface Ends {
  readonly low: number;
  readonly high: number;
}

interface PlaceAlong {
  readonly stray: number;
  readonly misfit: number;
}

const exactPlace = ({ low, high }: Ends): PlaceAlong => ({
  stray: (low + high) / 2,
  misfit: Math.abs(high - low),
});

const wornPlace = (ends: Ends, wear: number): PlaceAlong => {
  const { low, high } = ends;
  if (high > low) return exactPlace(ends);
  return {
    stray: Math.max(high, Math.min(low, 0)),
    misfit: Math.max(0, low - high - 2 * wear),
  };
};
