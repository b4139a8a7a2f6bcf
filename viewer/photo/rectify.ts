// A picture of a panel taken aslant, drawn anew as if seen straight on: each pixel of the result is looked up where the map
// puts it, between the four pixels about that spot. Exact but for what lies between pixels; no affine pieces. Pure: the
// worker and the tests hand in pixels, four bytes each.

import { type Extent, extentCentre, extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { type Homography, stretchAt } from "../../src/geometry/homography.ts";

export interface Pixels {
  readonly data: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}

export interface StraightView {
  /** Millimetres on the panel to pixels of the picture. */
  readonly toPicture: Homography;
  /** What of the panel's plane is drawn. */
  readonly box: Extent;
  /** Pixels of the result a millimetre. */
  readonly perMm: number;
}

export function rectified(picture: Pixels, view: StraightView): Pixels {
  const { toPicture, box, perMm } = view;
  const width = Math.max(1, Math.round(extentWidth(box) * perMm));
  const height = Math.max(1, Math.round(extentHeight(box) * perMm));
  const data = new Uint8ClampedArray(width * height * 4);
  const grid: Grid = {
    toPicture,
    left: box.minX,
    top: box.maxY,
    across: extentWidth(box) / width,
    down: extentHeight(box) / height,
    each: samplesAPixel(view),
  };
  const sum = [0, 0, 0, 0];
  for (let row = 0; row < height; row += 1)
    for (let column = 0; column < width; column += 1) {
      sum.fill(0);
      const count = addPixel(picture, grid, { row, column, sum });
      const at = (row * width + column) * 4;
      // Beyond the picture's edge nothing is known, and nothing is drawn.
      if (count === grid.each * grid.each)
        for (let part = 0; part < 4; part += 1) data[at + part] = sum[part]! / count;
    }
  return { data, width, height };
}

/** The result's pixels on the panel: from its upper left corner, in steps of millimetres. */
interface Grid {
  readonly toPicture: Homography;
  readonly left: number;
  readonly top: number;
  readonly across: number;
  readonly down: number;
  /** Spots of the picture that are looked up for a pixel, in each direction. */
  readonly each: number;
}

interface PixelSum {
  readonly row: number;
  readonly column: number;
  readonly sum: number[];
}

/** How many spots of a pixel lie in the picture; `sum` is what they show together. */
function addPixel(picture: Pixels, grid: Grid, { row, column, sum }: PixelSum): number {
  const { toPicture, left, top, across, down, each } = grid;
  let count = 0;
  for (let i = 0; i < each; i += 1)
    for (let j = 0; j < each; j += 1) {
      const x = left + (column + (i + 0.5) / each) * across;
      const y = top - (row + (j + 0.5) / each) * down;
      if (addSample(picture, toPicture, { x, y, sum })) count += 1;
    }
  return count;
}

/** Fine enough to lose none of the picture, as far as the result stays within its bounds. */
export function pixelsAMillimetre(toPicture: Homography, box: Extent): number {
  const corners = cornersOf(box).map((corner) => stretchAt(toPicture, corner));
  const middle = stretchAt(toPicture, extentCentre(box));
  const wanted = Math.min(
    FINEST,
    MOST_OVER_MIDDLE * middle,
    Math.max(...corners.filter(Number.isFinite), COARSEST),
  );
  const area = extentWidth(box) * extentHeight(box);
  return Math.min(Math.max(wanted, COARSEST), Math.sqrt(MOST_RESULT_PIXELS / area));
}

/** While marks are on their way a corner may come near the horizon, where a millimetre has no end of pixels. */
const MOST_OVER_MIDDLE = 1.5;

/** A result of 6 million pixels takes 24 MB and half a second. */
const MOST_RESULT_PIXELS = 6e6;
const COARSEST = 1;
/** 20 pixels a millimetre are more than a sheet shows at its largest. */
const FINEST = 20;

const cornersOf = ({ minX, minY, maxX, maxY }: Extent): readonly { x: number; y: number }[] => [
  { x: minX, y: minY },
  { x: maxX, y: minY },
  { x: maxX, y: maxY },
  { x: minX, y: maxY },
];

/** Where the picture is finer than the result, a pixel is the mean of several spots: else thin lines break up. */
const samplesAPixel = ({ toPicture, box, perMm }: StraightView): number => {
  const step = stretchAt(toPicture, extentCentre(box)) / perMm;
  return Number.isFinite(step) ? Math.min(MOST_SAMPLES, Math.max(1, Math.round(step))) : 1;
};

const MOST_SAMPLES = 4;

/** The middle of the first pixel is at 0.5, 0.5. False where the spot lies beyond the middles of the outermost pixels. */
function addSample(
  { data, width, height }: Pixels,
  map: Homography,
  { x, y, sum }: { readonly x: number; readonly y: number; readonly sum: number[] },
): boolean {
  const depth = map[6] * x + map[7] * y + map[8];
  if (depth <= 0) return false;
  const u = (map[0] * x + map[1] * y + map[2]) / depth - 0.5;
  const v = (map[3] * x + map[4] * y + map[5]) / depth - 0.5;
  const [left, top] = [Math.floor(u), Math.floor(v)];
  if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) return false;
  const [across, down] = [u - left, v - top];
  const at = (top * width + left) * 4;
  const below = at + width * 4;
  for (let part = 0; part < 4; part += 1) {
    const upper = data[at + part]! * (1 - across) + data[at + 4 + part]! * across;
    const lower = data[below + part]! * (1 - across) + data[below + 4 + part]! * across;
    sum[part] = sum[part]! + upper * (1 - down) + lower * down;
  }
  return true;
}
