// The rules over sheet parts: what the machine can and can't do.

import type { Rule } from "../rule.ts";
import {
  holeBelowMachine,
  insideCorner,
  largerThanBed,
  sharpCorner,
  stockByMachine,
  stockUntried,
} from "./machine.ts";

export const PARTS_RULES: readonly Rule[] = [
  stockByMachine,
  stockUntried,
  largerThanBed,
  insideCorner,
  sharpCorner,
  holeBelowMachine,
];
