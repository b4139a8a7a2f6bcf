// The rules over sheet parts: what the machine can and can't do. To add one: its file, its line here, its example in
// tests/findings.

import type { Rule } from "../rule.ts";
import { cornerByHand } from "./corner-by-hand.ts";
import { holeBelowMachine } from "./hole-below-machine.ts";
import { insideCorner } from "./inside-corner.ts";
import { kerfAssumed } from "./kerf-assumed.ts";
import { largerThanBed } from "./larger-than-bed.ts";
import { sharpCorner } from "./sharp-corner.ts";
import { stockByMachine } from "./stock-by-machine.ts";
import { stockUntried } from "./stock-untried.ts";

export const PARTS_RULES: readonly Rule[] = [
  stockByMachine,
  stockUntried,
  kerfAssumed,
  largerThanBed,
  insideCorner,
  cornerByHand,
  sharpCorner,
  holeBelowMachine,
];
