// Panels that run on beyond the usable length of their bay.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { BayLayout, PlacedPanel } from "../../layout/console/console-layout.ts";
import { neededLength } from "../needed-length.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { BayFacts, BayRule } from "./console-rule.ts";

const entry: CodeEntry = {
  code: "fit/bay-overrun",
  severity: "fault",
  title: "panels that are longer than their bay",
  why: "Beyond its usable length a bay has no rail to lie on and no hole for a stud. Panels are judged at their nominal size: their fasteners stand on the rail's own pitch, so that the little that each is cut under does not add up to another module.",
  example:
    "bays:\n  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 5 modules, depth: 180 mm }",
};

export const bayOverrun: BayRule = {
  entry,
  judge: (facts) =>
    facts.layout.bays.flatMap((bay) => {
      const beyond = panelsOf(bay, facts).filter(({ to }) => to > bay.length + arithmeticNoise);
      const last = beyond.toSorted((a, b) => b.to - a.to)[0];
      return last === undefined ? [] : [overrun(bay, { last, beyond: beyond.length }, facts)];
    }),
};

interface InBay {
  readonly panel: PlacedPanel;
  readonly to: number;
}

const panelsOf = (bay: BayLayout, { layout }: BayFacts): readonly InBay[] =>
  layout.panels.flatMap((panel) =>
    panel.place.kind === "bay" && panel.place.bay === bay.id ? [{ panel, to: panel.place.to }] : [],
  );

const overrun = (
  bay: BayLayout,
  { last, beyond }: { readonly last: InBay; readonly beyond: number },
  facts: BayFacts,
): Finding => {
  const span = spanOf(bay.design.written, "length");
  const words = lengthWords(facts, span);
  const others = beyond > 1 ? `, with ${beyond - 1} more panels,` : "";
  const needed = neededLength(bay, last.to, { texts: facts.texts, span }).text;
  return finding(entry, {
    message: `${last.panel.name}${others} ends ${words(last.to, bay.length)} along bay ${bay.id}, which is ${words(bay.length, last.to)} long: ${words(last.to - bay.length, 0)} too much. length: ${needed} holds it.`,
    span,
    related: [{ what: last.panel.name, span: last.panel.use.written.span }],
    subjects: [last.panel.name, bay.id],
    measured: measureMm(last.to),
    limit: measureMm(bay.length),
    source: { kind: "geometry", name: `the length of bay ${bay.id}` },
    remedies: [{ title: `length: ${needed}`, edits: [facts.edit(span, needed)] }],
  });
};
