// The web left between two cut-outs of one layer.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import { onePerPair } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { type CutOutPair, cutOutPairs, isFixed } from "./cut-out-pairs.ts";
import { placingSpan } from "./placing-span.ts";
import { WEB } from "./web-limit.ts";

const entry: CodeEntry = {
  code: "checks/web",
  severity: "query",
  title: "a thin web between two cut-outs",
  why: "A thin bridge between two openings breaks when the part is lifted off the bed or when a nut is tightened beside it. Acrylic and laminate want at least the sheet's thickness; under 1 mm is fragile in anything.",
  example:
    "components:\n  a: { part: led-3, at: { x: 50 mm, y: 30 mm } }\nmarkings:\n  - window: { at: { x: 60 mm, y: 30 mm }, width: 15 mm, height: 10 mm, layers: [face] }",
};

export const web: Rule = {
  entry,
  move: "away",
  judge: (facts) => {
    const { limit } = houseLimit(facts, WEB);
    return onePerPair(
      cutOutPairs(facts.layout)
        .filter(({ distance }) => !distance.overlaps && isUnder(distance.gap, limit))
        .filter(({ a, b }) => !(isFixed(a) && isFixed(b)))
        .map((pair) => thinWeb(pair, facts)),
    );
  },
};

const thinWeb = ({ a, b, layer, distance }: CutOutPair, facts: PanelFacts): Finding => {
  const { limit, source } = houseLimit(facts, WEB);
  const [first, second] = isFixed(b) ? [b, a] : [a, b];
  const span = placingSpan(facts.layout, second);
  const words = lengthWords(facts, span);
  return finding(entry, {
    message: `Between ${first.owner} and ${second.owner} ${words(distance.gap, limit)} of ${layer.id} is left; ${words(limit, distance.gap)} is wanted, ${words(limit - distance.gap, 0)} more.`,
    span,
    related: [{ what: first.owner, span: placingSpan(facts.layout, first) }],
    subjects: [second.owner, first.owner],
    measured: measureMm(distance.gap),
    limit: measureMm(limit),
    source,
  });
};
