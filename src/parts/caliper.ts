// What a caliper can say: hundredths, thousandths at best. More places than that are a slip or a sum, and are refused, so that
// nothing of a reading is rounded away.

import { decimal } from "../geometry/number.ts";
import { type Mm, mm } from "../geometry/quantity.ts";

/** The finest caliper in a workshop reads 0.001 mm, most 0.01 mm: common practice. */
const FINEST = 0.001;
const PLACES = 3;

/** Lines of why, one a reading that is finer than any caliper. */
export const tooFineReadings = (measured: Readonly<Record<string, number>>): readonly string[] =>
  Object.entries(measured)
    .filter(([, value]) => Number(value.toFixed(PLACES)) !== value)
    .map(
      ([name, value]) =>
        `${name}: ${value} mm is finer than a caliper reads (${FINEST} mm); ${decimal(value, PLACES)} mm can be entered`,
    );

/** A difference or a mean of readings, on the nanometre that every length is read to. */
export const worked = (value: number): Mm => mm(Math.round(value * 1e6) / 1e6);
