// Units of length that designs don't take, by the words that people write, and the same length in one that they do. Takes the figures and
// the word; gives what to write instead, or null where the word is no such unit.

import { decimal } from "../geometry/number.ts";
import { numberText, roundedTo } from "./number-text.ts";

interface OtherUnit {
  readonly words: RegExp;
  readonly instead: "mm" | "cm" | "m" | "in";
  /** How many of those it is, as numerator and denominator. */
  readonly times: readonly [bigint, bigint];
}

/** The foot is 12 inches (international yard and pound agreement of 1959); prefixes are the SI's. */
const OTHER_UNITS: readonly OtherUnit[] = [
  { words: /^(?:mm|mms|milli(?:met(?:er|re)s?)?)$/i, instead: "mm", times: [1n, 1n] },
  { words: /^(?:cm|cms|centi(?:met(?:er|re)s?)?)$/i, instead: "cm", times: [1n, 1n] },
  { words: /^met(?:er|re)s?$/i, instead: "m", times: [1n, 1n] },
  { words: /^(?:in|ins|inch|inches)$/i, instead: "in", times: [1n, 1n] },
  { words: /^(?:ft|foot|feet|')$/i, instead: "in", times: [12n, 1n] },
  { words: /^(?:thou|mils?)$/i, instead: "in", times: [1n, 1000n] },
  { words: /^(?:[u\u00b5\u03bc]m|microns?)$/, instead: "mm", times: [1n, 1000n] },
];

export const inKnownUnit = (figures: string, unit: string): string | null => {
  const other = OTHER_UNITS.find(({ words }) => words.test(unit));
  const read = numberText(figures);
  if (other === undefined || read.kind !== "number") return null;
  const [over, under] = other.times;
  // As it is written where only the word is another: 3/8 stays 3/8.
  if (over === under) return `${figures} ${other.instead}`;
  const { numerator, denominator, fraction } = read.value;
  const value = { numerator: numerator * over, denominator: denominator * under, fraction };
  return `${decimal(roundedTo(value, MILLIONTHS), 6)} ${other.instead}`;
};

const MILLIONTHS = 1_000_000n;
