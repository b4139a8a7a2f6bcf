// A length on the command line: 100, 100mm, "3 3/4 in". The same numbers as in a design.

import { numberText, roundedTo } from "../design/number-text.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { MM_PER_INCH } from "../standards/inch.ts";

const NANOMETRES = 1_000_000n;
const UNITS: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  '"': MM_PER_INCH,
};

/** null for what is no length above nothing. */
export const lengthArgument = (written: string): Mm | null => {
  const [, figure = "", unit = "mm"] = /^(.*?)\s*(mm|cm|m|in|")?$/.exec(written.trim()) ?? [];
  const read = numberText(figure.trim());
  const length =
    read.kind === "number" ? roundedTo(read.value, NANOMETRES) * (UNITS[unit] ?? 1) : 0;
  return length > 0 ? mm(length) : null;
};

export const noLength = (written: string): string =>
  `"${written}" is not a length; write 100, 100mm or "3 3/4 in".`;
