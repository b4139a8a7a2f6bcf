// What a printer makes of a size: holes come out small, pegs large, by how large they are. The datasheet's size and the
// printer's allowance stay two numbers to the end; only the sum is modelled.

import type { PrinterDesign } from "../../design/workshop-design.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";

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
const USUAL_HOLES: readonly { readonly to: number; readonly add: number }[] = [
  { to: 3, add: 0.4 },
  { to: 6, add: 0.3 },
  { to: 12, add: 0.25 },
  { to: Number.POSITIVE_INFINITY, add: 0.2 },
];

/** Pegs grow by 0.05 to 0.15 (common practice). */
const USUAL_PEG = mm(0.1);

export const allowedHole = (
  nominal: number,
  source: string,
  printer: PrinterDesign | null,
): AllowedHole => {
  const own = printer?.holes.toSorted((a, b) => a.to - b.to).find(({ to }) => nominal <= to);
  const usual = USUAL_HOLES.find(({ to }) => nominal <= to);
  const allowance = own?.add ?? usual?.add ?? 0;
  return {
    nominal: mm(nominal),
    allowance: mm(allowance),
    modelled: mm(nominal + allowance),
    source,
    measured: own !== undefined,
  };
};

/** A peg's diameter as modelled, so that it is printed at its nominal one. */
export const pegDiameter = (nominal: number): Mm => mm(nominal - USUAL_PEG);

/** Clearance a side by class of fit: the middle of each band of common practice. */
export const CLEARANCE_A_SIDE = {
  press: mm(0.05),
  snug: mm(0.15),
  sliding: mm(0.2),
  loose: mm(0.4),
} as const;

/** The first layer spreads by about this much (common practice): fits on the bed side start so much wider. */
export const BED_RELIEF = mm(0.4);
