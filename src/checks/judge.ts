// The one place of judgement: every rule over one panel's facts. What follows from another finding's cause is held back
// and counted there.

import type { CodeEntry, Finding } from "../diagnostics/finding.ts";
import { LAYOUT_RULES } from "./layout/rules.ts";
import { oneCauseOneFinding } from "./one-cause.ts";
import { PARTS_RULES } from "./parts/rules.ts";
import type { PanelFacts, Rule } from "./rule.ts";

/** Every rule there is. Its entries are the table of codes of this floor. */
export const RULES: readonly Rule[] = [...LAYOUT_RULES, ...PARTS_RULES];

export const CHECK_CODES: readonly CodeEntry[] = RULES.map(({ entry }) => entry);

export const judge = (facts: PanelFacts): readonly Finding[] =>
  oneCauseOneFinding(RULES.flatMap((rule) => rule.judge(facts))).map((found) => ({
    ...found,
    panel: facts.layout.name,
  }));
