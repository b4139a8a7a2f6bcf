// Limits that no standard sets. Each has a key in the workshop's `house-rules`, so that a shop which knows better says so.

import type { HouseRuleKey } from "../design/house-rules.ts";
import type { WorkshopDesign } from "../design/workshop-design.ts";
import type { LimitSource } from "../diagnostics/finding.ts";
import { type Mm, mm } from "../geometry/quantity.ts";

/** A figure that a workshop may set. */
export interface HouseFigure {
  readonly key: HouseRuleKey;
  /** What holds where the workshop says nothing, in mm. */
  readonly usual: number;
}

export interface HouseRule extends HouseFigure {
  /** What it says, as the limit's source: "webs of 1.5 mm (common practice)". */
  readonly name: string;
}

export interface HouseLimit {
  readonly limit: Mm;
  readonly source: LimitSource;
}

interface OfWorkshop {
  readonly workshop: WorkshopDesign | null;
}

export const isOwnFigure = ({ workshop }: OfWorkshop, { key }: HouseFigure): boolean =>
  workshop?.houseRules[key] !== undefined;

export const houseFigure = ({ workshop }: OfWorkshop, { key, usual }: HouseFigure): Mm =>
  workshop?.houseRules[key] ?? mm(usual);

export const houseLimit = (of: OfWorkshop, rule: HouseRule): HouseLimit => ({
  limit: houseFigure(of, rule),
  source: isOwnFigure(of, rule)
    ? { kind: "workshop", name: `house-rules: ${rule.key}` }
    : { kind: "house-rule", name: rule.name, key: rule.key },
});
