// Every code that a finding can carry, in order.

import type { CodeEntry } from "../diagnostics/finding.ts";
import { LAYOUT_CODES } from "../layout/codes.ts";
import { CLI_CODES } from "./codes.ts";

export const codeTable = (): readonly CodeEntry[] =>
  [...LAYOUT_CODES, ...CLI_CODES].sort((a, b) => (a.code < b.code ? -1 : 1));
