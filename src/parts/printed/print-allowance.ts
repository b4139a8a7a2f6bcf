// What a printer makes of a size: holes come out small, pegs large, by how large they are. The datasheet's size and the
// printer's allowance stay two numbers to the end; only the sum is modelled.

import type {
  ClearanceClasses,
  PrinterDesign,
  SizeAllowance,
} from "../../design/workshop-design.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { tidy } from "./opaque-wall.ts";

/** A hole's size as the datasheet or the fit asks for it, and what the printer needs on top: both are written down. */
export interface AllowedHole {
  readonly nominal: Mm;
  readonly allowance: Mm;
  /** nominal + allowance: as modelled. */
  readonly modelled: Mm;
  /** Who says the nominal size. */
  readonly source: string;
  /** The allowance comes from the workshop's own printer, not from common practice. */
  readonly measured: boolean;
}

/**
 * Added to a hole's diameter where no printer has been measured for it: 2 to 3 mm 0.3 to 0.5, 4 to 6 mm 0.2 to 0.4,
 * 8 to 12 mm 0.2 to 0.3, over 15 mm 0.1 to 0.3 (common practice); the middle of each.
 */
const USUAL_HOLES: readonly SizeAllowance[] = [
  { to: mm(3), add: mm(0.4) },
  { to: mm(6), add: mm(0.3) },
  { to: mm(12), add: mm(0.25) },
  { to: mm(Number.POSITIVE_INFINITY), add: mm(0.2) },
];

/** Pegs grow by 0.05 to 0.15 (common practice). */
const USUAL_PEGS: readonly SizeAllowance[] = [{ to: mm(Number.POSITIVE_INFINITY), add: mm(-0.1) }];

export const allowedHole = (
  nominal: number,
  source: string,
  printer: PrinterDesign | null,
): AllowedHole => {
  const own = allowanceFor(nominal, printer?.holes ?? []);
  const allowance = own ?? allowanceFor(nominal, USUAL_HOLES) ?? mm(0);
  return {
    nominal: mm(nominal),
    allowance,
    modelled: tidy(nominal + allowance),
    source,
    measured: own !== null,
  };
};

/** A peg's diameter as modelled, so that it is printed at its nominal one. */
export const pegDiameter = (nominal: number, printer: PrinterDesign | null): Mm =>
  tidy(
    nominal +
      (allowanceFor(nominal, printer?.pegs ?? []) ?? allowanceFor(nominal, USUAL_PEGS) ?? 0),
  );

const allowanceFor = (nominal: number, rows: readonly SizeAllowance[]): Mm | null =>
  rows.toSorted((a, b) => a.to - b.to).find(({ to }) => nominal <= to)?.add ?? null;

/**
 * Clearance a side by class of fit: press 0 to 0.1, snug 0.1 to 0.2, sliding 0.15 to 0.3, loose 0.3 to 0.5 (common
 * practice); the middle of each, where a printer has not been measured.
 */
export const USUAL_CLEARANCES: ClearanceClasses = {
  press: mm(0.05),
  snug: mm(0.15),
  sliding: mm(0.2),
  loose: mm(0.4),
};

export const clearancesOf = (printer: PrinterDesign | null): ClearanceClasses =>
  printer?.clearances ?? USUAL_CLEARANCES;

/** The first layer spreads by about this much (common practice): fits on the bed side start so much wider. */
const USUAL_BED_RELIEF = mm(0.4);

export const bedRelief = (printer: PrinterDesign | null): Mm =>
  printer?.firstLayer ?? USUAL_BED_RELIEF;
