// How a read file lies over its panel: at which scale, and turned over or not. One cause that spoils every number of a file
// (pixels for millimetres, a second mirror) is found here, named once, and taken out before the features are measured.

import { type Point, point } from "../geometry/contour.ts";
import {
  type Extent,
  extentCentre,
  extentHeight,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../geometry/extent.ts";
import { mirrorMargin, scaleAgreement } from "./allowance.ts";
import { likestBox } from "./box-index.ts";
import { drawnBoxes, type Lie } from "./drawn-line.ts";
import type { ExpectedLoop } from "./expectation.ts";
import type { ReadFile } from "./read-file.ts";

export interface FoundLie {
  readonly lie: Lie;
  /** Cause of a scale other than 1, in words; null where there is none. */
  readonly scaleCause: string | null;
  readonly fits: "as-expected" | "turned-over" | "either-way";
}

export interface ExpectedLie {
  readonly sheet: Extent;
  readonly isRearUp: boolean;
  readonly loops: readonly ExpectedLoop[];
  /** How far the machine's line lies beside the loop. */
  readonly offsetOf: (loop: ExpectedLoop) => number;
}

export const lieOfFile = (file: ReadFile, expected: ExpectedLie): FoundLie => {
  const targets = expected.loops.map((loop) => ({
    box: grownExtent(loop.box, loop.side * expected.offsetOf(loop)),
  }));
  const boxes = targets.map(({ box }) => box);
  const scaled = scaleOf(drawnBoxes(file, lieWith(expected, expected.isRearUp, 1)), boxes);
  const scale = scaled?.ratio ?? 1;
  const laid = (mirrored: boolean): Lie => {
    const lie = lieWith(expected, mirrored, scale);
    return scaled === null ? lie : { ...lie, shift: shiftBetween(drawnBoxes(file, lie), boxes) };
  };
  const finder = likestBox(targets);
  const straight = laid(expected.isRearUp);
  const turned = laid(!expected.isRearUp);
  const straightMisfit = meanMisfit(drawnBoxes(file, straight), finder, MOST_MISFIT);
  // Beyond this it only matters that it is worse.
  const enough = straightMisfit + 2 * mirrorMargin;
  const turnedMisfit = meanMisfit(drawnBoxes(file, turned), finder, enough);
  const scaleCause = scaled?.cause ?? null;
  if (turnedMisfit + mirrorMargin < straightMisfit) {
    return { lie: turned, scaleCause, fits: "turned-over" };
  }
  const fits = straightMisfit + mirrorMargin < turnedMisfit ? "as-expected" : "either-way";
  return { lie: straight, scaleCause, fits };
};

const lieWith = (expected: ExpectedLie, mirrored: boolean, scale: number): Lie => ({
  sheet: expected.sheet,
  mirrored,
  scale,
  shift: point(0, 0),
});

/** A file at a wrong scale has lost its corner too: it is laid middle on middle, to see whether the rest is sound. */
const shiftBetween = (drawn: readonly Extent[], expected: readonly Extent[]): Point => {
  const is = extentCentre(drawn.reduce(joinedExtent));
  const must = extentCentre(expected.reduce(joinedExtent));
  return point(must.x - is.x, must.y - is.y);
};

/** A line that fits nowhere counts no more than this, so that one stray line can't turn a file over. */
const MOST_MISFIT = 1;

/** Mean of what the boxes are off by; no further than `enough`, if it comes to that. */
const meanMisfit = (
  boxes: readonly Extent[],
  finder: (box: Extent) => { readonly misfit: number } | null,
  enough: number,
): number => {
  let sum = 0;
  for (const box of boxes) {
    sum += Math.min(finder(box)?.misfit ?? MOST_MISFIT, MOST_MISFIT);
    if (sum > enough * boxes.length) return enough;
  }
  return boxes.length === 0 ? 0 : sum / boxes.length;
};

interface Scale {
  readonly ratio: number;
  readonly cause: string;
}

/** Units that are taken for one another: 25.4 mm to the inch, 72 points or 96 pixels to the inch (CSS Values 3, 6.2). */
const SCALES: readonly Scale[] = [
  { ratio: 72 / 96, cause: "points taken for pixels (72/96)" },
  { ratio: 96 / 72, cause: "pixels taken for points (96/72)" },
  { ratio: 25.4, cause: "millimetres taken for inches (25.4)" },
  { ratio: 1 / 25.4, cause: "inches written as millimetres (1/25.4)" },
  { ratio: 96 / 25.4, cause: "pixels written as millimetres (96/25.4)" },
  { ratio: 25.4 / 96, cause: "millimetres taken for pixels (25.4/96)" },
  { ratio: 72 / 25.4, cause: "points written as millimetres (72/25.4)" },
  { ratio: 25.4 / 72, cause: "millimetres taken for points (25.4/72)" },
  { ratio: 10, cause: "centimetres taken for millimetres (10)" },
  { ratio: 0.1, cause: "millimetres written as centimetres (1/10)" },
];

/** A known scale that explains width and height of everything drawn; null where none does. */
const scaleOf = (drawn: readonly Extent[], expected: readonly Extent[]): Scale | null => {
  if (drawn.length === 0 || expected.length === 0) return null;
  const is = drawn.reduce(joinedExtent);
  const must = expected.reduce(joinedExtent);
  const across = extentWidth(is) / extentWidth(must);
  const up = extentHeight(is) / extentHeight(must);
  const agrees = (ratio: number, scale: Scale): boolean =>
    Math.abs(ratio / scale.ratio - 1) < scaleAgreement;
  return SCALES.find((scale) => agrees(across, scale) && agrees(up, scale)) ?? null;
};
