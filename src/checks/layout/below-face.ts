// What a hand or an eye must reach stands proud of the front at the thickest stack.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import { onePerEntry } from "../one-finding.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { withUnmeasured, worstStack } from "./depth-words.ts";

const entry: CodeEntry = {
  code: "checks/below-face",
  severity: "fault",
  title: "a control that ends below the face",
  why: "Lever, shaft, button or lens must come through all layers in front of it and still stand proud enough to be worked or seen.",
  example:
    "stack:\n  - { layer: face, sheet: black-acrylic-3 }\n  - { layer: backing, sheet: black-acrylic-3 }\ncomponents:\n  a: { part: led-3, at: { left: 40 mm, top: 30 mm } }",
};

const PROUD: HouseRule = {
  key: "proud",
  usual: 0,
  name: "a control that at least reaches the face (geometry)",
};

export const belowFace: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { limit, source } = houseLimit(facts, PROUD);
    return onePerEntry(facts.layout.components, (component) => {
      const { protrusion } = component.depth;
      if (protrusion === null || !isUnder(protrusion.low, limit)) return null;
      const { low, nominal } = protrusion;
      const usual =
        nominal === low ? "" : `; at nominal thickness it would be ${levelWords(nominal, limit)}`;
      return finding(entry, {
        message: `${component.id} ends ${levelWords(low, limit)} with ${worstStack(protrusion, "thickest")}${usual}; ${millimetres(limit - low, 0)} more ${limit === 0 ? "would reach the face" : `would stand the ${millimetres(limit, low)} proud that are wanted`}.`,
        span: component.span,
        subjects: withUnmeasured(component, facts.layout, {
          first: 0,
          last: component.clamped.last,
        }),
        measured: measureMm(low),
        limit: measureMm(limit),
        source,
      });
    });
  },
};

const levelWords = (above: number, wanted: number): string =>
  above < 0
    ? `${millimetres(-above, -wanted)} below the face`
    : `${millimetres(above, wanted)} above the face`;
