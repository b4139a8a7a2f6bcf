// The nearest spot to a wanted one that keeps clear of everything. Looks on a grid of a millimetre round the wanted place,
// so that what comes out can be written down.

import { type Point, point } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { arithmeticNoise } from "../geometry/tolerance.ts";
import type { Obstacle } from "./obstacle.ts";

/** Step and reach of the search. */
const STEP = 1;
const SEARCH_REACH = 36;

export interface SearchField {
  /** The spot lies in it. */
  readonly box: Extent;
  /** Least distance of the spot from anything: radius and web. */
  readonly reach: number;
  readonly obstacles: readonly Obstacle[];
}

/** null where nothing within reach is free. */
export const freeSpot = (wanted: Point, field: SearchField): Point | null => {
  const { box, reach } = field;
  const window = SEARCH_REACH + reach;
  const near = field.obstacles.filter((obstacle) => isNear(wanted, window, obstacle.box));
  for (const [dx, dy] of OFFSETS) {
    const spot = point(wanted.x + dx, wanted.y + dy);
    if (isWithin(spot, box) && near.every((obstacle) => isClear(spot, reach, obstacle)))
      return spot;
  }
  return null;
};

const isWithin = (spot: Point, box: Extent): boolean =>
  spot.x >= box.minX - arithmeticNoise &&
  spot.x <= box.maxX + arithmeticNoise &&
  spot.y >= box.minY - arithmeticNoise &&
  spot.y <= box.maxY + arithmeticNoise;

const isClear = (spot: Point, reach: number, obstacle: Obstacle): boolean =>
  !isNear(spot, reach, obstacle.box) || obstacle.gapTo(spot) >= reach;

const isNear = (at: Point, reach: number, box: Extent): boolean =>
  at.x > box.minX - reach &&
  at.x < box.maxX + reach &&
  at.y > box.minY - reach &&
  at.y < box.maxY + reach;

/** Offsets on the grid, nearest first; of two as near, the one to the left, then the lower. */
const OFFSETS: readonly (readonly [number, number])[] = (() => {
  const steps = Math.round(SEARCH_REACH / STEP);
  const offsets: [number, number][] = [];
  for (let column = -steps; column <= steps; column += 1)
    for (let row = -steps; row <= steps; row += 1) offsets.push([column * STEP, row * STEP]);
  return offsets.sort((a, b) => a[0] * a[0] + a[1] * a[1] - (b[0] * b[0] + b[1] * b[1]));
})();
