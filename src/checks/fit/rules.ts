// The rules over a console, in the order in which their findings are made.

import type { CodeEntry, Finding } from "../../diagnostics/finding.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";

const FIT_RULES: readonly ConsoleRule[] = [];

export const FIT_CODES: readonly CodeEntry[] = FIT_RULES.map(({ entry }) => entry);

export const judgeFit = (facts: ConsoleFacts): readonly Finding[] =>
  FIT_RULES.flatMap((rule) => rule.judge(facts)).map((one) => ({
    ...one,
    panel: facts.layout.name,
  }));
