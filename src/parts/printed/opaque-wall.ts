// How thick a wall of a stock must be to keep light in, on a printer: whole lines of its nozzle, whole layers of a floor.

import type { PrinterDesign, StockDesign } from "../../design/workshop-design.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";

export interface OpaqueWall {
  readonly line: Mm;
  /** Whole lines, at least two. */
  readonly lines: number;
  readonly thickness: Mm;
  readonly layer: Mm;
  /** Whole layers of a floor. */
  readonly floorLayers: number;
  readonly floor: Mm;
  readonly opaqueFrom: Mm | null;
}

/** Line and layer of a 0.4 mm nozzle: common practice, where no printer is named. */
export const USUAL_LINE = mm(0.45);
const USUAL_LAYER = mm(0.2);

/** Where nobody has held a wall to a lamp: light-coloured walls of 0.7 to 1.0 were seen leaking (common practice). */
const USUAL_OPAQUE = 1.35;

/** A wall of one line has no partner to hold on to, nor to close its pinholes: common practice. */
export const LEAST_LINES = 2;

export const opaqueWall = (stock: StockDesign, printer: PrinterDesign | null): OpaqueWall => {
  const line = printer?.line ?? USUAL_LINE;
  const layer = printer?.layer ?? USUAL_LAYER;
  const opaque = stock.opaqueFrom ?? USUAL_OPAQUE;
  const lines = Math.max(LEAST_LINES, wholeSteps(opaque, line));
  const floorLayers = wholeSteps(opaque, layer);
  return {
    line,
    lines,
    thickness: tidy(lines * line),
    layer,
    floorLayers,
    floor: tidy(floorLayers * layer),
    opaqueFrom: stock.opaqueFrom,
  };
};

/** The fewest whole steps that reach a length. */
export const wholeSteps = (length: number, step: number): number =>
  Math.ceil(length / step - arithmeticNoise);

/** Sums of lines and layers on the nanometre that lengths are read to: 3 x 0.45 is 1.35. */
export const tidy = (length: number): Mm => mm(Math.round(length * 1e6) / 1e6);
