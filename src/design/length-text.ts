// A length as text in the manner of another one: the unit that its author thinks in, few digits, no fraction.
// Takes millimetres, gives what the reader of lengths takes for the same number to a thousandth of a millimetre.

import { decimal } from "../geometry/number.ts";
import { MM_PER_INCH } from "../standards/inch.ts";

export type WritingUnit = "mm" | "in";

/** 0.0001 in is 0.00254 mm: an inch needs one digit more than that for a thousandth of a millimetre. */
const PLACES: Readonly<Record<WritingUnit, number>> = { mm: 3, in: 5 };

export const lengthIn = (unit: WritingUnit, millimetres: number): string =>
  `${figureIn(unit, millimetres)} ${unit}`;

export const figureIn = (unit: WritingUnit, millimetres: number): string =>
  decimal(unit === "in" ? millimetres / MM_PER_INCH : millimetres, PLACES[unit]);

/** As `like` is written: with its unit, or bare where it is bare. */
export const lengthLike = (like: string, millimetres: number): string =>
  /^[+-]?\d*\.?\d+$/.test(like.trim())
    ? figureIn("mm", millimetres)
    : lengthIn(unitOf(like), millimetres);

const unitOf = (length: string): WritingUnit => (isInchText(length.trim()) ? "in" : "mm");

/** Whether a text is a length in inches: the quotes round a legend are no inch marks. */
export const isInchText = (text: string): boolean => isLengthText(text) && /(?:in|")$/.test(text);

/** The unit that a file is written in: the one that more of its lengths carry. */
export const usualUnit = (text: string): WritingUnit => {
  const lengths = [...text.matchAll(VALUES)].map(([value]) => value.trim());
  const inches = lengths.filter(isInchText).length;
  const millimetres = lengths.filter((value) => isLengthText(value) && value.endsWith("mm")).length;
  return inches > millimetres ? "in" : "mm";
};

/** Quoted words and remarks, so that nothing in them is taken for a value; and plain values, without a remark behind them. */
const VALUES =
  /"[^"\n]*"|'[^'\n]*'|(?<!\S)#[^\n]*|(?<=:[ \t]*|[,[{]\s*|^[ \t]*-[ \t]+)[^\s:,[\]{}"'#][^:,[\]{}\n#]*/gm;

/** Whether a person typed a length as the reader takes it; nothing else may come into the text from a field. */
export const isLengthText = (typed: string): boolean =>
  /^[+-]?(?:\d*\.?\d+|(?:\d+[ -])?\d+\/\d+) ?(?:mm|cm|m|in|")?$/.test(typed);
