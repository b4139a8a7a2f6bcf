// How a finding names things and writes numbers, so that every rule says them alike.

import type { Measure } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";

/** `3.25 mm`: two decimals are finer than any cutter. */
export const millimetres = (value: number): string => `${decimal(value, 2)} mm`;

export const measureMm = (value: number): Measure => ({
  value: Math.round(value * 1e6) / 1e6,
  unit: "mm",
});

export const measureOf = (value: number, unit: Measure["unit"]): Measure => ({ value, unit });
