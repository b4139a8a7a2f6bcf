// What may hurt someone: a dummy that could be taken for an emergency stop is refused.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { onePerEntry } from "../one-finding.ts";
import type { Rule } from "../rule.ts";

const entry: CodeEntry = {
  code: "checks/emergency-look",
  severity: "fault",
  title: "a dummy that looks like an emergency stop",
  why: "A red mushroom on yellow is an emergency stop to everybody who sees it (ISO 13850). On a trainer, an exhibit or a desk where it stops nothing, somebody will reach for it when it matters. Take a button of another shape and colour. A real emergency stop is the work of licensed practice, outside this program.",
  example:
    "components:\n  stop: { part: push-button-22-mushroom-red, at: { left: 60 mm, top: 30 mm } }",
};

export const emergencyLook: Rule = {
  entry,
  move: null,
  judge: ({ layout }) =>
    onePerEntry(layout.components, (component) =>
      component.part.emergencyLook
        ? finding(entry, {
            message: `${component.id} looks like an emergency stop and stops nothing. It is refused: take a part of another shape and colour, such as push-button-22, or have a real one planned by licensed practice.`,
            span: spanOf(component.written, "part"),
            subjects: [component.id],
            source: { kind: "standard", name: "ISO 13850" },
          })
        : null,
    ),
};
