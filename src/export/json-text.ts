// A value as JSON for people and programs: two spaces, keys in the order given, a line end at the end.
// `<` and the separators U+2028 and U+2029 are escaped, so that the text can stand inside a page; the value is the same.

import { invariant } from "../geometry/invariant.ts";

export type JsonValue =
  | string
  | number
  | boolean
  | null
  | readonly JsonValue[]
  | { readonly [key: string]: JsonValue };

export const jsonText = (value: JsonValue): string =>
  `${JSON.stringify(value, finiteOnly, 2).replaceAll(/[<\u2028\u2029]/g, escaped)}\n`;

// JSON.stringify writes NaN and Infinity as null without a word.
const finiteOnly = (_key: string, value: JsonValue): JsonValue => {
  invariant(typeof value !== "number" || Number.isFinite(value), "a number in JSON is finite");
  return value;
};

const escaped = (character: string): string =>
  `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`;
