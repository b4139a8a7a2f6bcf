// Two openings of one layer that run into each other: one hole where two were meant.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { CutOut } from "../../layout/panel-layout.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { type CutOutPair, centreDistance, cutOutPairs, isFixed } from "./cut-out-pairs.ts";
import { pairRemedies } from "./pair-remedies.ts";
import { WEB } from "./web-limit.ts";

const entry: CodeEntry = {
  code: "checks/cut-outs-overlap",
  severity: "fault",
  title: "two cut-outs run into each other",
  why: "Where two openings meet, the web between them is gone: neither nut has a seat, and a loose piece falls into the machine. Move one of them, or make one opening on purpose with a window.",
  example:
    "components:\n  a: { part: toggle-12, at: { left: 40 mm, top: 30 mm } }\n  b: { part: toggle-12, at: { right-of: a, centres: 5 mm } }",
};

export const cutOutsOverlap: Rule = {
  entry,
  judge: (facts) =>
    cutOutPairs(facts.layout)
      .filter(({ a, b, distance }) => distance.overlaps && !isFixed(a) && !isFixed(b))
      .map((pair) => overlap(pair, facts)),
};

const overlap = ({ a, b, layer }: CutOutPair, facts: PanelFacts): Finding => {
  const apart = centreDistance(a, b);
  const need = leastDistance(a, b) + WEB.usual;
  return finding(entry, {
    message: `${a.owner} and ${b.owner} run into each other in ${layer.id}: their centres are ${millimetres(apart)} apart, and ${millimetres(need)} would leave a web of ${millimetres(WEB.usual)}.`,
    span: b.span,
    related: [{ what: a.owner, span: a.span }],
    subjects: [b.owner, a.owner],
    measured: measureMm(apart),
    limit: measureMm(need),
    source: { kind: "geometry", name: "cut-outs of one layer lie apart" },
    remedies: pairRemedies(a, b, { need: need - apart, facts }),
  });
};

/** Half sizes along the axis that the centres lie apart on. */
const leastDistance = (a: CutOut, b: CutOut): number => {
  const isAcross = Math.abs(b.centre.x - a.centre.x) >= Math.abs(b.centre.y - a.centre.y);
  const size = isAcross ? extentWidth : extentHeight;
  return (size(contourExtent(a.contour)) + size(contourExtent(b.contour))) / 2;
};
