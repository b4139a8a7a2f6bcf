// The one place of judgement: every rule over one panel's facts, findings in the order of the text.

import type { CodeEntry, Finding } from "../diagnostics/finding.ts";
import { LAYOUT_RULES } from "./layout/rules.ts";
import { PARTS_RULES } from "./parts/rules.ts";
import type { PanelFacts, Rule } from "./rule.ts";

/** Every rule there is. Its entries are the table of codes of this floor. */
export const RULES: readonly Rule[] = [...LAYOUT_RULES, ...PARTS_RULES];

export const CHECK_CODES: readonly CodeEntry[] = RULES.map(({ entry }) => entry);

export const judge = (facts: PanelFacts): readonly Finding[] =>
  RULES.flatMap((rule) => rule.judge(facts)).map((found) => ({
    ...found,
    panel: facts.layout.name,
  }));
