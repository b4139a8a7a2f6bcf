// The one way in which a number becomes text: fixed decimals, a point, no exponent, no negative zero.
// Number.toFixed is exact by the language's definition, so that every engine writes the same digits.

import { invariant } from "./invariant.ts";

/** `value` with exactly `places` decimals. */
export const fixed = (value: number, places: number): string => {
  invariant(Number.isFinite(value), "a number to be written is finite");
  invariant(Math.abs(value) < largestWritten, "a number to be written is below 1e21");
  const text = value.toFixed(places);
  return text.startsWith("-") && !/[1-9]/.test(text) ? text.slice(1) : text;
};

/** `value` with at most `places` decimals: trailing zeros are left out. */
export const decimal = (value: number, places: number): string => {
  const text = fixed(value, places);
  if (!text.includes(".")) return text;
  let end = text.length;
  while (text[end - 1] === "0") end -= 1;
  return text.slice(0, text[end - 1] === "." ? end - 1 : end);
};

/** From here on toFixed writes an exponent. */
const largestWritten = 1e21;
