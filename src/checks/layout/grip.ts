// Thickness that a part can hold: too thick for a clip, too thin for a bush.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { isOver, isUnder } from "../limits.ts";
import { onePerEntry } from "../one-finding.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { recordOf, withUnmeasured, worstStack } from "./depth-words.ts";

const entry: CodeEntry = {
  code: "checks/grip",
  severity: "fault",
  title: "a thickness that the part can't hold",
  why: "Snap-in parts, screwed parts and bushes take a range of thickness. Below it they rattle or bottom out, above it they don't latch or their screws don't reach.",
  example:
    "components:\n  audio: { part: xlr-3, clamps: [face, backing], at: { x: centre, y: centre } }",
};

export const grip: Rule = {
  entry,
  move: null,
  judge: ({ layout }) =>
    onePerEntry(layout.components, (component) => {
      const { hold } = component.part;
      if (hold.kind === "behind") return null;
      const { gripped } = component.depth;
      // Thread and nut judge a bush that is too thick for them; what is left is a stack too thin for the part.
      const isThick = hold.kind !== "bush" && isOver(gripped.high, hold.grip.most);
      const isThin = isUnder(gripped.low, hold.grip.least);
      if (!isThick && !isThin) return null;
      const [value, limit] = isThick
        ? [gripped.high, hold.grip.most]
        : [gripped.low, hold.grip.least];
      return finding(entry, {
        message: `${component.id} holds ${millimetres(hold.grip.least, value)} to ${millimetres(hold.grip.most, value)}; ${worstStack(gripped, isThick ? "thickest" : "thinnest")} makes it ${millimetres(value, limit)}, ${millimetres(Math.abs(value - limit), 0)} too ${isThick ? "much" : "little"}.`,
        span: component.span,
        subjects: withUnmeasured(component, layout, component.clamped),
        measured: measureMm(value),
        limit: measureMm(limit),
        source: recordOf(component),
      });
    }),
};
