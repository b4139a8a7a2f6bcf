// Two panels that want the same modules of a bay.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { BayFacts, BayRule } from "./console-rule.ts";
import { freeModuleOfTrain, type InBay, panelsOfBay, trainOf } from "./panel-train.ts";

const entry: CodeEntry = {
  code: "fit/panels-overlap",
  severity: "fault",
  title: "two panels at the same place on their rails",
  why: "Each panel takes the modules from where it begins to where it ends. Where two want the same ones, one of them does not go on.",
  example:
    "panels:\n  - { file: a.yaml, as: a, bay: aft, module: 0 }\n  - { file: b.yaml, as: b, bay: aft, module: 2 }",
};

export const panelsOverlap: BayRule = {
  entry,
  judge: (facts) =>
    facts.layout.bays.flatMap((bay) => {
      const panels = panelsIn(bay, facts);
      return panels.flatMap((second, index) => {
        const first = panels
          .slice(0, index)
          .findLast(({ to }) => to - second.from > arithmeticNoise);
        return first === undefined ? [] : [overlap(bay, { first, second }, facts)];
      });
    }),
};

interface Run {
  readonly panel: InBay;
  readonly from: number;
  readonly to: number;
}

const panelsIn = (bay: BayLayout, { layout }: BayFacts): readonly Run[] =>
  panelsOfBay(bay, layout)
    .map((panel) => ({ panel, from: panel.place.from, to: panel.place.to }))
    .toSorted((a, b) => a.from - b.from);

const overlap = (
  bay: BayLayout,
  { first, second }: { readonly first: Run; readonly second: Run },
  facts: BayFacts,
): Finding => {
  const { written, module } = second.panel.use;
  const span = module === null ? written.span : spanOf(written, "module");
  const words = lengthWords(facts, undefined);
  const all = panelsOfBay(bay, facts.layout);
  const [, ...behind] = trainOf(second.panel, all);
  const free = freeModuleOfTrain([second.panel, ...behind], all, bay);
  return finding(entry, {
    message: `${second.panel.name} begins ${words(second.from, first.to)} along bay ${bay.id}, and ${first.panel.name} ends at ${words(first.to, second.from)}: ${words(first.to - second.from, 0)} are wanted by both.${advice(free, behind, bay)}`,
    span,
    related: [{ what: first.panel.name, span: first.panel.use.written.span }],
    subjects: [second.panel.name, first.panel.name],
    measured: measureMm(second.from),
    limit: measureMm(first.to),
    source: { kind: "geometry", name: `the end of ${first.panel.name}` },
    remedies: free === null || module === null ? [] : [moved(decimal(free, 3), span, facts)],
  });
};

const advice = (free: number | null, behind: readonly InBay[], bay: BayLayout): string => {
  const followers = behind.map(({ name }) => name).join(", ");
  const are = behind.length === 1 ? "follows" : "follow";
  const train = behind.length === 0 ? "" : `, and ${followers} ${are}`;
  if (free !== null) return ` module: ${decimal(free, 3)} is free${train}.`;
  const them = behind.length === 0 ? "it" : `it and ${followers}, which ${are}`;
  return ` No place in bay ${bay.id} is free for ${them}.`;
};

const moved = (
  module: string,
  span: Finding["span"],
  facts: BayFacts,
): Finding["remedies"][number] => ({
  title: `module: ${module}`,
  edits: [facts.edit(span, module)],
});
