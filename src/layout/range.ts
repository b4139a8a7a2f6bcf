// Sums of quantities whose true value lies between two bounds: worst case, both ends kept.

import { mm } from "../geometry/quantity.ts";
import type { Range } from "./panel-layout.ts";

/** A value that somebody measured. */
export const known = (value: number): Range => ({
  low: mm(value),
  nominal: mm(value),
  high: mm(value),
  known: true,
});

export const NONE: Range = known(0);

/** A value that may lie anywhere from `low` to `high`. */
export const between = (low: number, nominal: number, high: number): Range => ({
  low: mm(low),
  nominal: mm(nominal),
  high: mm(high),
  known: false,
});

/** The sum, worst cases added. */
export const sumOf = (ranges: readonly Range[]): Range =>
  ranges.reduce(
    (sum, range) => ({
      low: mm(sum.low + range.low),
      nominal: mm(sum.nominal + range.nominal),
      high: mm(sum.high + range.high),
      known: sum.known && range.known,
    }),
    NONE,
  );

/** `length - range`: its low end belongs to the range's high end. */
export const lessRange = (length: number, range: Range): Range => ({
  low: mm(length - range.high),
  nominal: mm(length - range.nominal),
  high: mm(length - range.low),
  known: range.known,
});
