// Will nut, washer or flange still cover the hole at its finished size.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { isOver } from "../limits.ts";
import { onePerOwner } from "../one-finding.ts";
import type { Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { gaugeSource } from "./gauge-source.ts";
import { gaugedHoles, holeRemedies, holeThatWorks } from "./gauged-holes.ts";
import { holeSpan } from "./hole-span.ts";

const entry: CodeEntry = {
  code: "checks/hole-uncovered",
  severity: "fault",
  title: "a hole wider than its nut or flange covers",
  why: "What the nut, washer or flange does not cover shows as a gap, lets light out, and gives the part nothing to sit on.",
  example: "components:\n  a: { part: toggle-6, hole: 9 mm, at: { left: 40 mm, top: 30 mm } }",
};

export const holeUncovered: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    onePerOwner(gaugedHoles(facts), (hole) => {
      const { cutOut, gauge, layer } = hole;
      if (gauge.noGo === null || !isOver(gauge.finishedSize, gauge.noGo)) return null;
      const span = holeSpan(cutOut, facts.layout);
      const words = lengthWords(facts, span);
      const size = holeThatWorks(hole);
      return finding(entry, {
        message: `${cutOut.owner}: the finished hole in ${layer.id} is ${words(gauge.finishedSize, gauge.noGo)}; nut or flange covers ${words(gauge.noGo, gauge.finishedSize)}, ${words(gauge.finishedSize - gauge.noGo, 0)} too little.${size === null ? "" : ` hole: ${size} works.`}`,
        span,
        related: [{ what: layer.id, span: layer.design.written.span }],
        subjects: [cutOut.owner],
        measured: measureMm(gauge.finishedSize),
        limit: measureMm(gauge.noGo),
        source: gaugeSource(hole, facts.layout),
        remedies: holeRemedies(hole, facts),
      });
    }),
};
