// Depth behind the face against the room that the design gives.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { isOver } from "../limits.ts";
import { onePerEntry } from "../one-finding.ts";
import { roundedUp } from "../round-length.ts";
import type { Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { withUnmeasured } from "./depth-words.ts";

const entry: CodeEntry = {
  code: "checks/too-deep",
  severity: "fault",
  title: "a component deeper than the room behind the panel",
  why: "Body, tails, plug and the bend of its cable need room behind the face. What stands against a rib or a wall can't be plugged in.",
  example: "depth: 20 mm\ncomponents:\n  a: { part: toggle-6, at: { left: 40 mm, top: 30 mm } }",
};

export const tooDeep: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { layout } = facts;
    const room = layout.design.depth;
    if (room === null) return [];
    const depthSpan = spanOf(layout.design.written, "depth");
    const words = lengthWords(facts, depthSpan);
    return onePerEntry(layout.components, (component) => {
      const { total } = component.depth;
      if (!isOver(total.high, room)) return null;
      const value = roundedUp(facts, depthSpan, total.high);
      return finding(entry, {
        message: `${component.id} reaches ${words(total.high, room)} behind the face, cable and plug included; depth: gives ${words(room, total.high)}, ${words(total.high - room, 0)} too little. Where there is as much behind the panel, depth: ${value} holds it.`,
        span: component.span,
        related: [{ what: "depth", span: depthSpan }],
        subjects: withUnmeasured(component, layout, { first: 0, last: component.clamped.last }),
        measured: measureMm(total.high),
        limit: measureMm(room),
        source: { kind: "workshop", name: "the design's own depth" },
        remedies: [{ title: `depth: ${value}`, edits: [facts.edit(depthSpan, value)] }],
      });
    });
  },
};
