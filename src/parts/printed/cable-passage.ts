// The way of a cable out of a lit area: a block on its floor with an exit that passes the plug down through the floor, and
// a passage to it that turns once, so that no straight line leads from a lamp to the exit. Every corner is rounded.

import type { Contour, Point, Region } from "../../geometry/contour.ts";
import { filletedLoop } from "../../geometry/corners.ts";
import { type Extent, extent } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { polygon, rectangle, roundedRectangle } from "../../geometry/shapes.ts";
import { bandArea, freeStretches, placeOn, type Way } from "./free-bands.ts";
import { USUAL_CLEARANCES } from "./print-allowance.ts";

export interface CablePassage {
  readonly block: Contour;
  /** Through the floor. */
  readonly exit: Contour;
  /** Above the floor: exit, passage and mouth. */
  readonly passage: Contour;
  readonly at: Point;
}

/** A two-way plug on 2.5 mm pitch with its latch: common practice, measure yours. */
export const LAMP_PLUG = { width: mm(8), height: mm(6) } as const;

/** Cable notches are rounded by this: common practice. */
export const PASSAGE_CORNER = mm(2);

/** Room for two or three pairs of thin wire; twice the corner, so that its end is round. */
const PASSAGE_WIDTH = 2 * PASSAGE_CORNER;

/** Free floor before the mouth. */
const BEFORE_MOUTH = 5;

/** Places are tried this far apart. */
const STEP = 2;

/** Places that are free for block and mouth, one a row and way, from below and then from the left. */
export const cablePassages = (area: Region, wall: Mm): readonly CablePassage[] => {
  const size = blockSize(wall);
  return WAYS.flatMap((way) => spots(area, way, size))
    .toSorted((a, b) => a.box.minY - b.box.minY || a.box.minX - b.box.minX)
    .map((spot) => passageAt(spot, size, wall));
};

interface Turned {
  readonly way: Way;
  /** The mouth looks to higher places across the way, or to lower ones. */
  readonly mouth: 1 | -1;
}

const WAYS: readonly Turned[] = [
  { way: "x", mouth: 1 },
  { way: "x", mouth: -1 },
  { way: "y", mouth: 1 },
  { way: "y", mouth: -1 },
];

interface BlockSize {
  readonly length: number;
  readonly depth: number;
  readonly exitLength: number;
  readonly exitDepth: number;
  /** From the exit to the turn. */
  readonly run: number;
}

/**
 * Light that comes through the arm before the turn spreads by width over length of that arm; over the width of the other
 * arm it comes this far toward the exit and no farther.
 */
const blockSize = (wall: number): BlockSize => {
  const exitLength = LAMP_PLUG.width + 2 * USUAL_CLEARANCES.loose;
  const exitDepth = Math.max(LAMP_PLUG.height + 2 * USUAL_CLEARANCES.loose, 2 * PASSAGE_WIDTH);
  const depth = exitDepth + 2 * wall;
  const arm = depth - wall - PASSAGE_WIDTH;
  const run =
    Math.max(PASSAGE_WIDTH, (PASSAGE_WIDTH * PASSAGE_WIDTH) / arm) + USUAL_CLEARANCES.loose;
  return { length: exitLength + run + PASSAGE_WIDTH + 2 * wall, depth, exitLength, exitDepth, run };
};

interface Spot extends Turned {
  readonly along: number;
  /** The block's closed side. */
  readonly across: number;
  readonly box: Extent;
}

const spots = (region: Region, turned: Turned, size: BlockSize): readonly Spot[] => {
  const area = bandArea(region, turned.way);
  const reach = size.depth + BEFORE_MOUTH;
  const found: Spot[] = [];
  for (let low = Math.ceil(area.low / STEP) * STEP; low + reach < area.high; low += STEP) {
    for (const { from, to } of freeStretches(area, low, low + reach)) {
      if (to - from < size.length) continue;
      const across = turned.mouth > 0 ? low : low + reach;
      const corner = placeOn(turned.way, from, low);
      const opposite = placeOn(turned.way, from + size.length, low + reach);
      const box = extent(corner.x, corner.y, opposite.x, opposite.y);
      found.push({ ...turned, along: from, across, box });
    }
  }
  return found;
};

/** Drawn with the exit at the start and the mouth at the end, then put in its place. */
const passageAt = (spot: Spot, size: BlockSize, wall: number): CablePassage => {
  const put = (along: number, deep: number): Point =>
    placeOn(spot.way, spot.along + along, spot.across + spot.mouth * deep);
  const box = (from: readonly [number, number], to: readonly [number, number]): Extent => {
    const a = put(from[0], from[1]);
    const b = put(to[0], to[1]);
    return extent(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.max(a.x, b.x), Math.max(a.y, b.y));
  };
  const end = wall + size.exitLength;
  const turn = end + size.run;
  const corners: readonly Point[] = [
    put(wall, wall),
    put(turn + PASSAGE_WIDTH, wall),
    put(turn + PASSAGE_WIDTH, size.depth + BEFORE_MOUTH / 2),
    put(turn, size.depth + BEFORE_MOUTH / 2),
    put(turn, wall + PASSAGE_WIDTH),
    put(end, wall + PASSAGE_WIDTH),
    put(end, wall + size.exitDepth),
    put(wall, wall + size.exitDepth),
  ];
  return {
    block: rectangle(box([0, 0], [size.length, size.depth])),
    exit: roundedRectangle(box([wall, wall], [end, wall + size.exitDepth]), PASSAGE_CORNER),
    passage: filletedLoop(polygon(corners), PASSAGE_CORNER, "all"),
    at: put(wall + size.exitLength / 2, wall + size.exitDepth / 2),
  };
};
