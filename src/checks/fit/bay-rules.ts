// The rules over the places of a console's panels and what is read there, in the order in which their findings are made.

import type { CodeEntry, Finding } from "../../diagnostics/finding.ts";
import { bayOverrun } from "./bay-overrun.ts";
import type { BayFacts, BayRule } from "./console-rule.ts";
import { freeModules } from "./free-modules.ts";
import { legendSmallAtEye } from "./legend-small-at-eye.ts";
import { panelNowhere } from "./panel-nowhere.ts";
import { panelsOverlap } from "./panels-overlap.ts";
import { sectionBeyondBay } from "./section-beyond-bay.ts";

const BAY_RULES: readonly BayRule[] = [
  bayOverrun,
  panelsOverlap,
  freeModules,
  panelNowhere,
  legendSmallAtEye,
  sectionBeyondBay,
];

export const BAY_CODES: readonly CodeEntry[] = BAY_RULES.map(({ entry }) => entry);

export const judgeBays = (facts: BayFacts): readonly Finding[] =>
  BAY_RULES.flatMap((rule) => rule.judge(facts)).map((one) => ({
    ...one,
    panel: facts.layout.name,
  }));
