// A photograph of a panel that is laid under its drawing: the file, and which spots of the picture are which of the panel.
// In the picture places are pixels from its upper left corner, across and down, the picture upright as it is looked at
// (a camera's note of how it was held is followed); the middle of the first pixel is at 0.5, 0.5.

import type { PlanePoint } from "../geometry/homography-pair.ts";
import type { Degrees } from "../geometry/quantity.ts";
import type { Written } from "./written.ts";

export interface PhotoDesign {
  /** Relative to the panel's file, as written. */
  readonly file: string;
  readonly marks: PhotoMarks;
  readonly written: Written;
}

export type PhotoMarks =
  | { readonly kind: "points"; readonly points: readonly PhotoPoint[] }
  | { readonly kind: "sheet"; readonly sheet: PhotoSheet };

export interface PhotoPoint {
  /** Pixels. */
  readonly inPicture: PlanePoint;
  /** Millimetres from the panel's lower left corner, across and up. */
  readonly onPanel: PlanePoint;
  readonly written: Written;
}

/** A sheet of paper that lay on the panel when it was photographed: it says scale and slant, `at` and `turn` where it lay. */
export interface PhotoSheet {
  readonly size: SheetSize;
  /** Lower left, lower right, upper right, upper left of the sheet set upright, in pixels. */
  readonly corners: FourPoints;
  /** Its lower left corner, in millimetres from the panel's. */
  readonly at: PlanePoint;
  /** Counter-clockwise about that corner. */
  readonly turn: Degrees;
  readonly written: Written;
}

export type FourPoints = readonly [PlanePoint, PlanePoint, PlanePoint, PlanePoint];

export type SheetSize = keyof typeof SHEET_SIZES;

/** Width and height upright, mm. The A sizes: ISO 216, table 1; letter: 8 1/2 by 11 in (ANSI/ASME Y14.1, size A). */
export const SHEET_SIZES = {
  a3: { width: 297, height: 420 },
  a4: { width: 210, height: 297 },
  a5: { width: 148, height: 210 },
  a6: { width: 105, height: 148 },
  letter: { width: 215.9, height: 279.4 },
} as const;
