// A scale with more stops than the selector has, or a knob that does not go with its shaft.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { isUnder } from "../limits.ts";
import { onePerEntry } from "../per-entry.ts";
import type { Rule } from "../rule.ts";
import { measureMm, measureOf, millimetres } from "../words.ts";

const stops: CodeEntry = {
  code: "checks/scale-stops",
  severity: "fault",
  title: "a scale with more stops than its selector",
  why: "The marks follow the detents. A mark beyond the last stop can never be reached, and the switch stands on the wrong word.",
  example:
    "components:\n  range: { part: rotary-12, knob: knob-pointer, scale: { from: 1, to: 16, major: 1 }, at: { x: centre, y: centre } }",
};

const bore: CodeEntry = {
  code: "checks/knob-bore",
  severity: "fault",
  title: "a knob whose bore does not go with the shaft",
  why: "A 6 mm knob stays off a 6.35 mm shaft, and wobbles on a 4 mm one.",
  example: "components:\n  volume: { part: pot-24, knob: knob-12, at: { x: centre, y: centre } }",
};

export const scaleStops: Rule = {
  entry: stops,
  judge: ({ layout }) =>
    onePerEntry(layout.components, (component) => {
      const { scale } = component.common;
      const positions = component.part.turning?.positions ?? null;
      if (scale === null || positions === null) return null;
      const marks = Math.floor(Math.abs(scale.to - scale.from) / scale.major) + 1;
      if (marks <= positions) return null;
      return finding(stops, {
        message: `${component.id}: its scale has ${marks} marks and the selector ${positions} positions.`,
        span: scale.written.span,
        subjects: [component.id],
        measured: measureOf(marks, "count"),
        limit: measureOf(positions, "count"),
        source: { kind: "datasheet", name: component.part.figures.source },
      });
    }),
};

/** A bore this much wider than its shaft wobbles: common practice. */
const LOOSE = 0.15;

export const knobBore: Rule = {
  entry: bore,
  judge: ({ layout }) =>
    onePerEntry(layout.components, (component) => {
      const { shaft } = component.part;
      const knob = component.fitted.find((hardware) => hardware.kind === "knob");
      if (shaft === null || knob?.kind !== "knob") return null;
      if (!isUnder(knob.bore, shaft.diameter) && !isUnder(shaft.diameter + LOOSE, knob.bore))
        return null;
      return finding(bore, {
        message: `${component.id}: ${knob.id} has a bore of ${millimetres(knob.bore)} and the shaft is ${millimetres(shaft.diameter)}.`,
        span: component.span,
        subjects: [component.id],
        measured: measureMm(knob.bore),
        limit: measureMm(shaft.diameter),
        source: { kind: "datasheet", name: knob.figures.source },
      });
    }),
};
