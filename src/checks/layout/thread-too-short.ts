// Thread for the nut at the thickest stack that the ranges allow.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import type { PlacedComponent, Range } from "../../layout/panel-layout.ts";
import { isUnder } from "../limits.ts";
import { onePerEntry } from "../one-finding.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { recordOf, withUnmeasured, worstStack } from "./depth-words.ts";

const entry: CodeEntry = {
  code: "checks/thread-too-short",
  severity: "fault",
  title: "too little thread for the nut",
  why: "A bush has so much thread: washers, layers and paint use it up from one end, and the nut needs its own thickness of what is left. Sheet is not nominal: cast acrylic of 3 mm may be 3.7. The thickest sheet that the range allows is what counts until yours is measured.",
  example:
    "components:\n  a: { part: toggle-6, clamps: [face, backing], at: { left: 40 mm, top: 30 mm } }",
};

export const threadTooShort: Rule = {
  entry,
  move: null,
  judge: ({ layout }) =>
    onePerEntry(layout.components, (component) => {
      const { threadLeft, nutThickness } = component.depth;
      if (threadLeft === null || nutThickness === null || !isUnder(threadLeft.low, nutThickness))
        return null;
      const left =
        threadLeft.low > 0
          ? `${millimetres(threadLeft.low, nutThickness)} of thread`
          : "no thread at all";
      return finding(entry, {
        message: `${component.id}: ${worstStack(threadLeft, "thickest")} leaves ${left} for a nut of ${millimetres(nutThickness, threadLeft.low)}, ${millimetres(nutThickness - threadLeft.low, 0)} too little. ${advice(component, threadLeft, nutThickness)}`,
        span: component.span,
        subjects: withUnmeasured(component, layout, component.clamped),
        measured: measureMm(threadLeft.low),
        limit: measureMm(nutThickness),
        source: recordOf(component),
      });
    }),
};

const advice = (component: PlacedComponent, left: Range, nut: number): string => {
  if (!isUnder(left.high, nut))
    return `Measure the sheet and write it down: up to ${millimetres(mostGripped(component, left, nut))} in all, paint included, it holds.`;
  return `It holds ${millimetres(Math.max(0, mostGripped(component, left, nut)))} in all: clamp fewer layers, or take a longer bush.`;
};

/** Taken down to a hundredth, so that the figure works as it is read. */
const mostGripped = (component: PlacedComponent, left: Range, nut: number): number =>
  Math.floor((component.depth.gripped.nominal + left.nominal - nut) * 100) / 100;
