// Will the part enter its hole at the finished size.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { isUnder } from "../limits.ts";
import { onePerOwner } from "../one-finding.ts";
import type { Rule } from "../rule.ts";
import { lengthWords, measureMm, millimetres } from "../words.ts";
import { gaugeSource } from "./gauge-source.ts";
import { type GaugedHole, gaugedHoles, holeRemedies, holeThatWorks } from "./gauged-holes.ts";
import { holeSpan } from "./hole-span.ts";

const entry: CodeEntry = {
  code: "checks/hole-too-small",
  severity: "fault",
  title: "a hole that its part won't enter",
  why: "Paint lies on the wall of a hole too: 0.08 mm a side turns a hole cut at 6.4 into one of 6.24, and a bush of 6.35 stays out. Leave the size to the program, which adds paint and fit, or give a larger one.",
  example:
    "stack:\n  - { layer: face, sheet: black-acrylic-3, finish: paint-and-engrave }\ncomponents:\n  a: { part: toggle-6, hole: 6.4 mm, at: { left: 40 mm, top: 30 mm } }",
};

export const holeTooSmall: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    onePerOwner(gaugedHoles(facts), (hole) => {
      const { cutOut, gauge, layer } = hole;
      if (!isUnder(gauge.finishedSize, gauge.goSize)) return null;
      const span = holeSpan(cutOut, facts.layout);
      const words = lengthWords(facts, span);
      return finding(entry, {
        message: `${cutOut.owner}: the finished hole in ${layer.id} is ${words(gauge.finishedSize, gauge.goSize)} and ${words(gauge.goSize, gauge.finishedSize)} must pass, ${words(gauge.goSize - gauge.finishedSize, 0)} more.${paintWords(hole)}${worksWords(hole)}`,
        span,
        related: [{ what: layer.id, span: layer.design.written.span }],
        subjects: [cutOut.owner],
        measured: measureMm(gauge.finishedSize),
        limit: measureMm(gauge.goSize),
        source: gaugeSource(hole, facts.layout),
        remedies: holeRemedies(hole, facts),
      });
    }),
};

const paintWords = ({ cutOut, gauge, layer }: GaugedHole): string => {
  const paint = layer.holePaint.nominal;
  if (!cutOut.asCut || paint === 0) return "";
  return ` It is cut at ${millimetres(gauge.finishedSize + 2 * paint)} and painted ${millimetres(paint)} a side.`;
};

const worksWords = (hole: GaugedHole): string => {
  const size = holeThatWorks(hole);
  return size === null ? "" : ` hole: ${size} works.`;
};
