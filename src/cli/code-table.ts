// Every code that a finding can carry, in order.

import { ARRANGE_CODES } from "../arrange/arrange-list.ts";
import { CATALOGUE_CODES } from "../catalogue/codes.ts";
import { BAY_CODES } from "../checks/fit/bay-rules.ts";
import { FIT_CODES } from "../checks/fit/rules.ts";
import { FRAME_RULE_CODES } from "../checks/frame/rules.ts";
import { CHECK_CODES } from "../checks/judge.ts";
import { DESIGN_CODES } from "../design/codes.ts";
import type { CodeEntry } from "../diagnostics/finding.ts";
import { LAYOUT_CODES } from "../layout/codes.ts";
import { CONSOLE_LAYOUT_CODES } from "../layout/console/codes-of-console.ts";
import { PACK_CODES } from "../pack/codes.ts";
import { FRAME_CODES } from "../parts/frame/codes.ts";
import { PRINTED_CODES } from "../parts/printed/codes.ts";
import { PARTS_CODES } from "../parts/sheet-parts.ts";
import { CLI_CODES } from "./codes.ts";

export const codeTable = (): readonly CodeEntry[] =>
  [
    ...DESIGN_CODES,
    ...CATALOGUE_CODES,
    ...LAYOUT_CODES,
    ...PARTS_CODES,
    ...FRAME_CODES,
    ...PRINTED_CODES,
    ...CHECK_CODES,
    ...FRAME_RULE_CODES,
    ...CONSOLE_LAYOUT_CODES,
    ...BAY_CODES,
    ...FIT_CODES,
    ...ARRANGE_CODES,
    ...PACK_CODES,
    ...CLI_CODES,
  ].sort((a, b) => (a.code < b.code ? -1 : 1));
