// Limits that no standard sets. Each has a key in the workshop's `house-rules`, so that a shop which knows better says so.

import type { HouseRuleKey } from "../design/house-rules.ts";
import type { WorkshopDesign } from "../design/workshop-design.ts";
import type { LimitSource } from "../diagnostics/finding.ts";
import { type Mm, mm } from "../geometry/quantity.ts";

export interface HouseRule {
  readonly key: HouseRuleKey;
  /** Limit where the workshop says nothing, in mm. */
  readonly usual: number;
  /** What it says, as the limit's source: "webs of 1.5 mm (common practice)". */
  readonly name: string;
}

export interface HouseLimit {
  readonly limit: Mm;
  readonly source: LimitSource;
}

export const houseLimit = (
  { workshop }: { readonly workshop: WorkshopDesign | null },
  rule: HouseRule,
): HouseLimit => {
  const own = workshop?.houseRules[rule.key];
  if (own !== undefined)
    return { limit: own, source: { kind: "workshop", name: `house-rules: ${rule.key}` } };
  return { limit: mm(rule.usual), source: { kind: "house-rule", name: rule.name, key: rule.key } };
};
