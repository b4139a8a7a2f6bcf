// A scale with more marks than the selector has stops.

import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import type { ScaleDesign } from "../../design/panel-design.ts";
import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import { onePerEntry } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureOf } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/scale-stops",
  severity: "fault",
  title: "a scale with more stops than its selector",
  why: "The marks follow the detents. A mark beyond the last stop can never be reached, and the switch stands on the wrong word.",
  example:
    "components:\n  range: { part: rotary-12, scale: { from: 1, to: 16, major: 1 }, at: { x: centre, y: centre } }",
};

export const scaleStops: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    onePerEntry(facts.layout.components, (component) => {
      const { scale } = component.common;
      const positions = component.part.turning?.positions ?? null;
      if (scale === null || positions === null) return null;
      const marks = Math.floor(Math.abs(scale.to - scale.from) / scale.major + samePlace) + 1;
      return marks <= positions ? null : tooMany(component, { scale, marks, positions, facts });
    }),
};

const tooMany = (
  component: PlacedComponent,
  of: {
    readonly scale: ScaleDesign;
    readonly marks: number;
    readonly positions: number;
    readonly facts: PanelFacts;
  },
): Finding => {
  const { scale, marks, positions } = of;
  const last = scale.from + Math.sign(scale.to - scale.from) * (positions - 1) * scale.major;
  const advice =
    scale.labels === null
      ? `to: ${decimal(last, 6)} would end at the last one.`
      : `Take ${positions} labels.`;
  return finding(entry, {
    message: `${component.id}: its scale has ${marks} marks and ${component.part.id} has ${positions} positions, ${marks - positions} too few. ${advice}`,
    span: scale.written.span,
    subjects: [component.id],
    measured: measureOf(marks, "count"),
    limit: measureOf(positions, "count"),
    source: limitOfFigures(component.part.figures),
    remedies: lastMark(component, decimal(last, 6), of),
  });
};

const lastMark = (
  component: PlacedComponent,
  last: string,
  of: { readonly scale: ScaleDesign; readonly facts: PanelFacts },
): readonly Remedy[] => {
  const span = of.scale.written.keys["to"];
  if (span === undefined) return [];
  return [{ title: `to: ${last} (${component.entry})`, edits: [of.facts.edit(span, last)] }];
};
