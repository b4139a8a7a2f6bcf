// Tenths of a millimetre, as a length is offered where nobody has written one: a builder measures and cuts to them. What is a whole
// number of them but for the arithmetic behind it stays the same number.

import { samePlace } from "./tolerance.ts";

const PER_MILLIMETRE = 10;

/** The next whole number of tenths that is no smaller. */
export const upToTenth = (length: number): number => tenths(tenthsIn(length));

/** How many reach a length. */
export const tenthsIn = (length: number): number => Math.ceil(length * PER_MILLIMETRE - samePlace);

/** The next that is no larger. */
export const downToTenth = (length: number): number =>
  Math.floor(length * PER_MILLIMETRE + samePlace) / PER_MILLIMETRE;

export const tenths = (count: number): number => count / PER_MILLIMETRE;
