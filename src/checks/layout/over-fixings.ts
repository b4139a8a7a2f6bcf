// A cut-out that eats into a stack fixing, a dowel or a mount hole.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import type { Rule } from "../rule.ts";
import { measureMm } from "../words.ts";
import { cutOutPairs, isFixed } from "./cut-out-pairs.ts";

const entry: CodeEntry = {
  code: "checks/over-fixing",
  severity: "fault",
  title: "a cut-out over a fixing, dowel or mount hole",
  why: "The screw, dowel or stud has nothing left to hold, and its head stands in the opening. Move the component, or give the fixing another place with `fixings: { at: ... }`; mount holes stay where the mount puts them.",
  example: "components:\n  a: { part: toggle-12, at: { left: 5 mm, bottom: 5 mm } }",
};

export const overFixings: Rule = {
  entry,
  judge: ({ layout }) =>
    cutOutPairs(layout)
      .filter(({ a, b, distance }) => distance.overlaps && (isFixed(a) || isFixed(b)))
      .map(({ a, b, layer }) => {
        const [fixed, other] = isFixed(a) ? [a, b] : [b, a];
        return finding(entry, {
          message: `${other.owner} runs into ${fixed.owner} in ${layer.id}.`,
          span: other.span,
          related: [{ what: fixed.owner, span: fixed.span }],
          subjects: [other.owner, fixed.owner],
          measured: measureMm(0),
          limit: measureMm(1),
          source: { kind: "geometry", name: "a fixing needs material round it" },
        });
      }),
};
