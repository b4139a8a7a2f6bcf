// Every code that reading a design can give, for `why CODE`. Codes are never reused for something else.

import type { CodeEntry } from "../diagnostics/finding.ts";
import { LIST_CODES } from "./codes-of-lists.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { VALUE_CODES } from "./codes-of-values.ts";

export const DESIGN_CODES: readonly CodeEntry[] = [
  ...Object.values(TEXT_CODES),
  ...Object.values(VALUE_CODES),
  ...Object.values(MEANING_CODES),
  ...Object.values(LIST_CODES),
].toSorted((a, b) => (a.code < b.code ? -1 : 1));
