// Two openings of one layer that run into each other: one hole where two were meant.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { houseLimit } from "../house-rule.ts";
import { onePerPair } from "../one-finding.ts";
import { contourParting } from "../parting.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { type CutOutPair, cutOutPairs, isFixed } from "./cut-out-pairs.ts";
import { placingSpan } from "./placing-span.ts";
import { WEB } from "./web-limit.ts";

const entry: CodeEntry = {
  code: "checks/cut-outs-overlap",
  severity: "fault",
  title: "two cut-outs run into each other",
  why: "Where two openings meet, the web between them is gone: neither nut has a seat, and a loose piece falls into the machine. Move one of them, or make one opening on purpose with a window.",
  example:
    "components:\n  a: { part: led-5, at: { left: 40 mm, top: 30 mm } }\n  b: { part: led-5, at: { right-of: a, centres: 4 mm } }",
};

export const cutOutsOverlap: Rule = {
  entry,
  move: "away",
  judge: (facts) =>
    onePerPair(
      cutOutPairs(facts.layout)
        .filter(({ a, b, distance }) => distance.overlaps && !isFixed(a) && !isFixed(b))
        .map((pair) => overlap(pair, facts)),
    ),
};

const overlap = ({ a, b, layer }: CutOutPair, facts: PanelFacts): Finding => {
  const web = houseLimit(facts, WEB).limit;
  const { apart, needed, way } = contourParting(a.contour, b.contour, web);
  const span = placingSpan(facts.layout, b);
  const words = lengthWords(facts, span);
  return finding(entry, {
    message: `${a.owner} and ${b.owner} run into each other in ${layer.id}: their centres are ${words(apart, needed)} apart${way}; ${words(needed, apart)} would leave a web of ${words(web)}, ${words(needed - apart, 0)} more.`,
    span,
    related: [{ what: a.owner, span: placingSpan(facts.layout, a) }],
    subjects: [b.owner, a.owner],
    measured: measureMm(apart),
    limit: measureMm(needed),
    source: { kind: "geometry", name: "the edge of the other cut-out" },
  });
};
