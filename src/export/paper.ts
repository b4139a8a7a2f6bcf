// Sizes of the papers that a workshop prints on, upright, in millimetres.

import { type Mm, mm } from "../geometry/quantity.ts";

export type PaperName = "A4" | "Letter";

export interface PaperSize {
  readonly width: Mm;
  readonly height: Mm;
}

/** A4: ISO 216:2007. Letter: ANSI/ASME Y14.1, size A, 8.5 x 11 in. */
export const PAPERS: Readonly<Record<PaperName, PaperSize>> = {
  A4: { width: mm(210), height: mm(297) },
  Letter: { width: mm(215.9), height: mm(279.4) },
};
