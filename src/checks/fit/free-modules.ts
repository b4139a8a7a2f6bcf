// Modules of a bay that no panel takes: a hole in the console, unless a blanking panel closes it.

import { appendItem } from "../../design/edit.ts";
import { source } from "../../design/source.ts";
import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { BayLayout, FreeRun } from "../../layout/console/console-layout.ts";
import { measureOf } from "../words.ts";
import { blankingItem } from "./blanking-item.ts";
import type { BayFacts, BayRule } from "./console-rule.ts";

const entry: CodeEntry = {
  code: "fit/free-modules",
  severity: "note",
  title: "free modules in a bay",
  why: "An open stretch lets light out, dust and fingers in. A blanking panel closes it: a sheet or a print without anything on it, cut for the rails.",
  example: "panels:\n  - { file: panels/a.yaml, as: a, bay: aft, module: 4 }",
};

export const freeModules: BayRule = {
  entry,
  // Where a panel has lost its place, what looks free may be its own.
  judge: (facts) =>
    facts.layout.lost.length > 0
      ? []
      : facts.layout.bays.flatMap((bay) => bay.free.map((run) => freeRun(bay, run, facts))),
};

const freeRun = (bay: BayLayout, run: FreeRun, facts: BayFacts): Finding => {
  const { unit } = bay.mount.height;
  const module = decimal(run.from / bay.pitch, 3);
  const count = decimal(run.modules, 3);
  const item = blankingItem(bay, run);
  const closes = item?.closesAll === true ? item.text : null;
  const advice = unit === "mm" ? `A panel of ${count} mm closes it.` : `${closes} closes it.`;
  return finding(entry, {
    message: `Bay ${bay.id} is open from ${unit === "mm" ? "" : `${unit} `}${module} on, for ${count} ${unit}.${closes === null && unit !== "mm" ? "" : ` ${advice}`}`,
    span: bay.design.written.span,
    subjects: [bay.id],
    measured: measureOf(run.modules, unit),
    limit: measureOf(0, unit),
    source: { kind: "geometry", name: `the length of bay ${bay.id}` },
    remedies: closes === null ? [] : [blanking(closes, facts)],
  });
};

const blanking = (item: string, { layout, texts }: BayFacts): Remedy => {
  const { file } = layout.design;
  const added = appendItem(source(file, texts.get(file) ?? ""), ["panels"], item);
  return { title: item, edits: added.kind === "edit" ? [added.edit] : [] };
};
