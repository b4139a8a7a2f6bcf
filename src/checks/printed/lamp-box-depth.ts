// A lamp box that is shallower or deeper than boxes of annunciators are.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { isLampBoxPart } from "../../parts/printed/lamp-box-facts.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isOver, isUnder } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/lamp-box-depth",
  severity: "query",
  title: "a lamp box that is shallower or deeper than usual",
  why: "Cells of 15 to 20 mm are common practice: in shallower ones the LEDs show as spots behind the text, deeper ones are dim. Nobody has measured yours: try one cell.",
  example: `stack:
  - { layer: face, sheet: opal-acrylic-3, finish: paint-and-engrave }
components:
  window: { part: lamp-window-18x12, at: centre, lamp-box: { depth: 8 mm } }`,
};

const LEAST: HouseRule = {
  key: "lamp-box-least",
  usual: 15,
  name: "lamp boxes of 15 to 20 mm (common practice)",
};

const MOST: HouseRule = { key: "lamp-box-most", usual: 20, name: LEAST.name };

export const lampBoxDepth: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const [least, most] = [houseLimit(facts, LEAST), houseLimit(facts, MOST)];
    return facts.printedParts.filter(isLampBoxPart).flatMap(({ owner, span, lampBox }) => {
      const depth = lampBox.outsideDepth;
      const isShallow = isUnder(depth, least.limit);
      if (!isShallow && !isOver(depth, most.limit)) return [];
      const { limit, source } = isShallow ? least : most;
      const [said, more] = isShallow
        ? ["LEDs show as spots", "too little"]
        : ["the text is dim", "too much"];
      return [
        finding(entry, {
          message: `The lamp box of ${owner} is ${millimetres(depth, limit)} deep; outside ${millimetres(least.limit)} to ${millimetres(most.limit)} ${said}: ${millimetres(Math.abs(depth - limit), 0)} ${more}. depth: ${millimetres(limit, depth)} is usual.`,
          span,
          subjects: [owner],
          measured: measureMm(depth),
          limit: measureMm(limit),
          source,
        }),
      ];
    });
  },
};
