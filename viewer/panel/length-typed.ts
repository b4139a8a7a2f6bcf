// A length as a person types it into a field, as the design takes it: 12.5 mm, 3/8 in, 5 3/4 in. A plain number is in the unit that
// the file is written in, and is written with it. One reader for all fields. Pure.

import { isLengthText, type WritingUnit } from "../../src/design/length-text.ts";
import { numberText, roundedTo } from "../../src/design/number-text.ts";
import { MM_PER_INCH } from "../../src/standards/inch.ts";

export type LengthTyped =
  | {
      readonly kind: "length";
      /** As it goes into the text. */
      readonly text: string;
      readonly mm: number;
    }
  /** A whole sentence without its stop. */
  | { readonly kind: "refused"; readonly why: string };

const UNITS: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  '"': MM_PER_INCH,
};

/** As the reader of designs rounds: to a nanometre. */
const NANOMETRES = 1_000_000n;

export function lengthTyped(typed: string, unit: WritingUnit): LengthTyped {
  const text = typed.trim();
  const [, figures = "", own] = /^(.*?) ?(mm|cm|m|in|")?$/.exec(text) ?? [];
  const read = numberText(figures);
  if (!isLengthText(text) || read.kind !== "number")
    return { kind: "refused", why: `"${typed}" is no length; write 12.5 mm or 3/8 in` };
  const isBare = own === undefined;
  if (isBare && read.value.fraction && unit === "mm")
    return { kind: "refused", why: `"${typed}" has no unit; write ${text} in` };
  const mm = roundedTo(read.value, NANOMETRES) * (UNITS[own ?? unit] ?? 1);
  return { kind: "length", text: isBare && unit === "in" ? `${text} in` : text, mm };
}
