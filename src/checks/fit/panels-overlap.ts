// Two panels that want the same modules of a bay.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { BayLayout, FreeRun, PlacedPanel } from "../../layout/console/console-layout.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { BayFacts, BayRule } from "./console-rule.ts";

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
  readonly panel: PlacedPanel;
  readonly from: number;
  readonly to: number;
}

const panelsIn = (bay: BayLayout, { layout }: BayFacts): readonly Run[] =>
  layout.panels.flatMap((panel) =>
    panel.place.kind === "bay" && panel.place.bay === bay.id
      ? [{ panel, from: panel.place.from, to: panel.place.to }]
      : [],
  );

const overlap = (
  bay: BayLayout,
  { first, second }: { readonly first: Run; readonly second: Run },
  facts: BayFacts,
): Finding => {
  const { written, module } = second.panel.use;
  const span = module === null ? written.span : spanOf(written, "module");
  const words = lengthWords(facts, undefined);
  const room = second.to - second.from;
  const free = bay.free.find((run) => run.to - run.from >= room - arithmeticNoise);
  return finding(entry, {
    message: `${second.panel.name} begins ${words(second.from, first.to)} along bay ${bay.id}, and ${first.panel.name} ends at ${words(first.to, second.from)}: ${words(first.to - second.from, 0)} are wanted by both.${advice(free, bay)}`,
    span,
    related: [{ what: first.panel.name, span: first.panel.use.written.span }],
    subjects: [second.panel.name, first.panel.name],
    measured: measureMm(second.from),
    limit: measureMm(first.to),
    source: { kind: "geometry", name: `where ${first.panel.name} ends` },
    remedies:
      free === undefined || module === null ? [] : [moved(moduleOf(free, bay), span, facts)],
  });
};

const advice = (free: FreeRun | undefined, bay: BayLayout): string =>
  free === undefined
    ? ` No run of free modules in bay ${bay.id} is long enough.`
    : ` module: ${moduleOf(free, bay)} is free.`;

const moduleOf = (free: FreeRun, bay: BayLayout): string => decimal(free.from / bay.pitch, 3);

const moved = (
  module: string,
  span: Finding["span"],
  facts: BayFacts,
): Finding["remedies"][number] => ({
  title: `module: ${module}`,
  edits: [facts.edit(span, module)],
});
