// One line of the inspection table: a feature of a written file, what it must be and what was read back.

import { fixed } from "../geometry/number.ts";

export interface InspectionRow {
  readonly file: string;
  /** Name of the operation; `sheet` for what holds for the whole file, a process for its count, an owner on several layers. */
  readonly feature: string;
  readonly what:
    | "x"
    | "y"
    | "size"
    | "length"
    | "area"
    | "process"
    | "count"
    | "outline"
    | "mirror"
    | "kerf"
    | "units"
    | "order"
    | "part"
    | "revision"
    | "side"
    | "content"
    | "register"
    | "closed"
    | "outward"
    | "shells"
    | "triangles"
    | "volume"
    | "box"
    | "bed";
  readonly expected: string;
  readonly measured: string;
  /** Absolute difference in mm (mm² for areas); null where it is not a number. */
  readonly difference: number | null;
  readonly passed: boolean;
}

/** A row without the file that it belongs to: the inspection of a file puts that in. */
export type Reading = Omit<InspectionRow, "file">;

/** Digits of a reading: the files carry 0.1 µm. */
const PLACES = 4;

/** A difference is given to a nanometre, as lengths are read. */
const DIFFERENCE_PLACES = 6;

export const length = (value: number): string => fixed(value, PLACES);

/** Two numbers that must agree within `allowance`. */
export const numberReading = (
  feature: string,
  what: InspectionRow["what"],
  value: { readonly expected: number; readonly measured: number; readonly allowance: number },
): Reading => {
  const difference = roundedDifference(value.expected - value.measured);
  return {
    feature,
    what,
    expected: length(value.expected),
    measured: length(value.measured),
    difference,
    passed: difference <= value.allowance,
  };
};

/** Two statements that must be the same. */
export const wordReading = (
  feature: string,
  what: InspectionRow["what"],
  value: { readonly expected: string; readonly measured: string },
): Reading => ({
  feature,
  what,
  ...value,
  difference: null,
  passed: value.expected === value.measured,
});

export const roundedDifference = (difference: number): number =>
  Number(fixed(Math.abs(difference), DIFFERENCE_PLACES));
