// The one way in which a number becomes text: fixed decimals, a point, no exponent, no negative zero.
// Number.toFixed is exact by the language's definition, so that every engine writes the same digits; what a whole
// number of last digits tells beyond doubt is written from that, with the same result in little more than half the time.

import { invariant } from "./invariant.ts";

/** `value` with exactly `places` decimals. */
export const fixed = (value: number, places: number): string => {
  const size = lastDigits(value, places);
  return size === null
    ? exactFixed(value, places)
    : withPoint(value < 0 && size > 0 ? "-" : "", size, places);
};

/** `value` with at most `places` decimals: trailing zeros are left out. */
export const decimal = (value: number, places: number): string => {
  const size = lastDigits(value, places);
  if (size === null) return trimmed(exactFixed(value, places));
  let digits = size;
  let left = places;
  while (left > 0 && digits % 10 === 0) {
    digits /= 10;
    left -= 1;
  }
  return withPoint(value < 0 && size > 0 ? "-" : "", digits, left);
};

/**
 * `value` as a reader compares it with `other`: with at most `places` decimals where those tell the two apart, else with
 * exactly as many as do. What is the same to the last place is no comparison, and written as `decimal` does.
 */
export const decimalBeside = (value: number, other: number, places: number): string => {
  if (decimal(value, places) !== decimal(other, places)) return decimal(value, places);
  for (let more = places + 1; more <= MOST_COMPARED; more += 1) {
    const text = fixed(value, more);
    if (text !== fixed(other, more)) return text;
  }
  return decimal(value, places);
};

/** Lengths are read to 1e-6 mm, 4e-8 in. */
const MOST_COMPARED = 8;

/** From here on toFixed writes an exponent. */
const largestWritten = 1e21;

const exactFixed = (value: number, places: number): string => {
  invariant(Number.isFinite(value), "a number to be written is finite");
  invariant(Math.abs(value) < largestWritten, "a number to be written is below 1e21");
  const text = value.toFixed(places);
  return text.startsWith("-") && !/[1-9]/.test(text) ? text.slice(1) : text;
};

const trimmed = (text: string): string => {
  if (!text.includes(".")) return text;
  let end = text.length;
  while (text[end - 1] === "0") end -= 1;
  return text.slice(0, text[end - 1] === "." ? end - 1 : end);
};

/**
 * Powers of ten that are exact, as many as are written in bulk. The product with one of them is off by half a unit of its
 * last place: below 2^31 that is 2.4e-7, and what lies further than a thousandth from half a digit rounds as its exact
 * value does.
 */
const POWERS = [1, 10, 100, 1e3, 1e4, 1e5, 1e6] as const;
const MOST_DIGITS = 2 ** 31;
const HALF_WAY = 1e-3;

/** The size of `value` in its last digits, rounded; null where only the exact value can tell which way. */
const lastDigits = (value: number, places: number): number | null => {
  const power = POWERS[places];
  if (power === undefined) return null;
  const size = Math.abs(value) * power;
  // Not a number fails this too.
  if (!(size < MOST_DIGITS)) return null;
  const whole = Math.floor(size);
  const rest = size - whole;
  if (rest > 0.5 - HALF_WAY && rest < 0.5 + HALF_WAY) return null;
  return rest < 0.5 ? whole : whole + 1;
};

const withPoint = (sign: string, digits: number, places: number): string => {
  const power = POWERS[places] ?? 1;
  if (power === 1) return `${sign}${digits}`;
  const units = Math.floor(digits / power);
  return `${sign}${units}.${`${digits - units * power + power}`.slice(1)}`;
};
