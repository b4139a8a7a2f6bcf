// The web left between two cut-outs of one layer.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { cutOutPairs, isFixed } from "./cut-out-pairs.ts";
import { pairRemedies } from "./pair-remedies.ts";
import { WEB } from "./web-limit.ts";

const entry: CodeEntry = {
  code: "checks/web",
  severity: "query",
  title: "a thin web between two cut-outs",
  why: "A thin bridge between two openings breaks when the part is lifted off the bed or when a nut is tightened beside it. Acrylic and laminate want at least the sheet's thickness; under 1 mm is fragile in anything.",
  example:
    "components:\n  a: { part: toggle-12, at: { left: 40 mm, top: 30 mm } }\n  b: { part: toggle-12, at: { right-of: a, centres: 7.4 mm } }",
};

export const webs: Rule = {
  entry,
  judge: (facts) => {
    const { limit, source } = houseLimit(facts, WEB);
    return cutOutPairs(facts.layout)
      .filter(
        ({ a, b, distance }) =>
          !distance.overlaps && isUnder(distance.gap, limit) && !(isFixed(a) && isFixed(b)),
      )
      .map(({ a, b, layer, distance }) =>
        finding(entry, {
          message: `Between ${a.owner} and ${b.owner} only ${millimetres(distance.gap)} of ${layer.id} is left; ${millimetres(limit)} is wanted, ${millimetres(limit - distance.gap)} more.`,
          span: b.span,
          related: [{ what: a.owner, span: a.span }],
          subjects: [b.owner, a.owner],
          measured: measureMm(distance.gap),
          limit: measureMm(limit),
          source,
          remedies: pairRemedies(a, b, { need: limit - distance.gap, facts }),
        }),
      );
  },
};
