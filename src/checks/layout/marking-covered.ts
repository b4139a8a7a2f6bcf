// A marking under what is fitted on the face.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PlacedBody } from "../../layout/panel-layout.ts";
import type { Rule } from "../rule.ts";
import { measureMm } from "../words.ts";
import { clearingOf } from "./marking-clear.ts";
import { capitalised, isMarkedOn, isShown, markingName } from "./marking-shapes.ts";

const entry: CodeEntry = {
  code: "checks/marking-covered",
  severity: "query",
  title: "a marking under a knob, cap or guard",
  why: "What is fitted on the face hides the marking. It can be made; somebody must say that it should be.",
  example:
    "components:\n  volume: { part: pot-16, at: { x: 60 mm, y: 30 mm } }\nmarkings:\n  - legend: { text: MAX, at: { x: 60 mm, y: 40 mm } }",
};

const COVERING: readonly PlacedBody["role"][] = ["knob", "cap", "guard", "flange", "washer", "nut"];

export const markingCovered: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const covers = facts.layout.components.flatMap((component) =>
      component.bodies
        .filter((body) => COVERING.includes(body.role) && body.high > 0)
        .map((body) => ({ body, component, box: contourExtent(body.footprint) })),
    );
    return facts.layout.markings.filter(isShown).flatMap((marking) => {
      const hidden = covers.find(({ body, box }) => isMarkedOn(marking, body.footprint, box));
      if (hidden === undefined) return [];
      const clearing = clearingOf(marking, hidden.box, facts);
      return [
        finding(entry, {
          message: `${capitalised(markingName(marking))} lies under the ${hidden.body.role} of ${hidden.component.id}: ${clearing.advice}.`,
          span: marking.span,
          related: [{ what: hidden.component.id, span: hidden.component.span }],
          subjects: [marking.owner, hidden.component.id],
          measured: measureMm(clearing.measured),
          limit: measureMm(clearing.limit),
          source: { kind: "geometry", name: "what covers the face hides it" },
          remedies: clearing.remedies,
        }),
      ];
    });
  },
};
