// A picture of pixels: rows from the top, red, green, blue, a byte each.

export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly rgb: Uint8Array;
}

/** Red, green and blue, 0 to 255. */
export type Rgb = readonly [number, number, number];
