// What was meant by figures that stand where a whole number is wanted: the number, where they are one written otherwise (`1e1`, `4.0`),
// or the two that it lies between.

import { numberText, type Rational } from "./number-text.ts";

/** Within the bounds, smallest first; empty where the figures are no number, or one beyond them. */
export const wholeNumbersNear = (
  figures: string,
  { least, most }: { readonly least: number; readonly most: number },
): readonly number[] => {
  const value = meantBy(figures);
  if (value === null) return [];
  const below = floorOf(value);
  const whole = below * value.denominator === value.numerator ? [below] : [below, below + 1n];
  return whole.filter((each) => each >= BigInt(least) && each <= BigInt(most)).map(Number);
};

const meantBy = (figures: string): Rational | null => {
  const read = numberText(figures);
  if (read.kind === "number") return read.value;
  const meant = "meant" in read.why ? read.why.meant : null;
  const again = meant === null ? null : numberText(meant);
  return again?.kind === "number" ? again.value : null;
};

/** Division of whole numbers leaves out what is over, towards zero. */
const floorOf = ({ numerator, denominator }: Rational): bigint => {
  const towardsZero = numerator / denominator;
  return numerator < 0n && towardsZero * denominator !== numerator ? towardsZero - 1n : towardsZero;
};
