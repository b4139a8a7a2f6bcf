// A length as a person types it into a field, as the design takes it: 12.5 mm, 3/8 in, 5 3/4 in. A plain number is in the unit that
// the file is written in, and is written with it. One reader for all fields. Pure.

import { isLengthText, type WritingUnit } from "../../src/design/length-text.ts";
import { writtenLength } from "../../src/design/written-length.ts";

export type LengthTyped =
  | {
      readonly kind: "length";
      /** As it goes into the text. */
      readonly text: string;
      readonly mm: number;
    }
  /** A whole sentence without its stop. */
  | { readonly kind: "refused"; readonly why: string };

export function lengthTyped(typed: string, unit: WritingUnit): LengthTyped {
  const text = typed.trim();
  const read = writtenLength(text, unit);
  if (!isLengthText(text) || read === null)
    return { kind: "refused", why: `"${typed}" is no length; write 12.5 mm or 3/8 in` };
  const isBare = read.unit === "";
  if (isBare && read.isFraction && unit === "mm")
    return { kind: "refused", why: `"${typed}" has no unit; write ${text} in` };
  return { kind: "length", text: isBare && unit === "in" ? `${text} in` : text, mm: read.mm };
}

/** Of what has to be there: a pitch, a radius, a width. The reader takes none of zero or less, and the thing would be gone. */
export function sizeTyped(typed: string, unit: WritingUnit): LengthTyped {
  const length = lengthTyped(typed, unit);
  return length.kind === "refused" || length.mm > 0
    ? length
    : { kind: "refused", why: `"${typed}" is not more than 0; write 12.5 mm or 3/8 in` };
}
