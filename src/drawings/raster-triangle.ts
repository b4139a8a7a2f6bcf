// One triangle into a depth buffer: every sample whose middle lies on it, where nothing nearer has been drawn.

import type { Rgb } from "./raster.ts";

type Corner = readonly [x: number, y: number, depth: number];

export interface RasterFace {
  /** Unit normal in picture axes: right, up, toward the viewer. */
  readonly normal: readonly [number, number, number];
  readonly shade: Rgb;
}

/** Samples row by row from the top; depth grows toward the viewer. */
export interface RasterTarget {
  readonly width: number;
  readonly height: number;
  readonly depth: Float32Array;
  readonly face: Int32Array;
  readonly faces: RasterFace[];
}

export const rasterTriangle = (
  corners: readonly [Corner, Corner, Corner],
  look: { readonly colour: Rgb; readonly scale: number },
  target: RasterTarget,
): void => {
  const [a, b, c] = corners;
  // Rows run down, so that a face that looks at the viewer turns clockwise here.
  const area = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
  if (area >= 0) return;
  const normal = normalOf(corners, look.scale);
  const face = target.faces.push({ normal, shade: shadeOf(look.colour, normal) }) - 1;
  fill({ corners, area, face }, target);
};

const normalOf = (
  [a, b, c]: readonly [Corner, Corner, Corner],
  scale: number,
): readonly [number, number, number] => {
  const ux = (b[0] - a[0]) / scale;
  const uy = (a[1] - b[1]) / scale;
  const uz = b[2] - a[2];
  const vx = (c[0] - a[0]) / scale;
  const vy = (a[1] - c[1]) / scale;
  const vz = c[2] - a[2];
  const x = uy * vz - uz * vy;
  const y = uz * vx - ux * vz;
  const z = ux * vy - uy * vx;
  const length = Math.sqrt(x * x + y * y + z * z);
  return length === 0 ? [0, 0, 1] : [x / length, y / length, z / length];
};

/** Light from the upper left, and a little from everywhere. */
const LIGHT = [-0.35, 0.75, 0.56] as const;
const AMBIENT = 0.48;

const shadeOf = (colour: Rgb, normal: readonly [number, number, number]): Rgb => {
  const facing = normal[0] * LIGHT[0] + normal[1] * LIGHT[1] + normal[2] * LIGHT[2];
  const share = AMBIENT + (1 - AMBIENT) * Math.max(0, facing);
  return [colour[0] * share, colour[1] * share, colour[2] * share];
};

const fill = (
  {
    corners,
    area,
    face,
  }: {
    readonly corners: readonly [Corner, Corner, Corner];
    readonly area: number;
    readonly face: number;
  },
  target: RasterTarget,
): void => {
  const [a, b, c] = corners;
  const top = Math.max(0, Math.floor(Math.min(a[1], b[1], c[1])));
  const bottom = Math.min(target.height - 1, Math.ceil(Math.max(a[1], b[1], c[1])));
  for (let row = top; row <= bottom; row += 1) {
    const y = row + 0.5;
    // A long thin triangle fills little of its box: only where this row meets it are samples asked.
    const span: Span = { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };
    widen(span, a, b, y);
    widen(span, b, c, y);
    widen(span, c, a, y);
    const left = Math.max(0, Math.floor(span.low) - 1);
    const right = Math.min(target.width - 1, Math.ceil(span.high) + 1);
    for (let column = left; column <= right; column += 1) {
      const x = column + 0.5;
      const first = ((b[0] - x) * (c[1] - y) - (c[0] - x) * (b[1] - y)) / area;
      const second = ((c[0] - x) * (a[1] - y) - (a[0] - x) * (c[1] - y)) / area;
      const third = 1 - first - second;
      if (first < 0 || second < 0 || third < 0) continue;
      const depth = first * a[2] + second * b[2] + third * c[2];
      const index = row * target.width + column;
      if (depth <= (target.depth[index] ?? 0)) continue;
      target.depth[index] = depth;
      target.face[index] = face;
    }
  }
};

interface Span {
  low: number;
  high: number;
}

/** Takes in where an edge meets a row, with half a row to spare at each end. */
const widen = (span: Span, from: Corner, to: Corner, y: number): void => {
  const rise = to[1] - from[1];
  const low = Math.max(Math.min(from[1], to[1]), y - 0.5);
  const high = Math.min(Math.max(from[1], to[1]), y + 0.5);
  if (low > high) return;
  for (const height of [low, high]) {
    const x = rise === 0 ? from[0] : from[0] + ((height - from[1]) / rise) * (to[0] - from[0]);
    span.low = Math.min(span.low, x);
    span.high = Math.max(span.high, x);
  }
  if (rise === 0) {
    span.low = Math.min(span.low, to[0]);
    span.high = Math.max(span.high, to[0]);
  }
};
