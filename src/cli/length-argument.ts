// A length on the command line: 100, 100mm, "3 3/4 in". The same numbers as in a design.

import { writtenLength } from "../design/written-length.ts";
import { type Mm, mm } from "../geometry/quantity.ts";

/** null for what is no length above nothing. */
export const lengthArgument = (written: string): Mm | null => {
  const length = writtenLength(written)?.mm ?? 0;
  return length > 0 ? mm(length) : null;
};

export const noLength = (written: string): string =>
  `"${written}" is not a length; write 100, 100mm or "3 3/4 in".`;
