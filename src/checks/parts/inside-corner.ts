// A window whose corners are tighter than the tool that is to cut them.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { tightestInsideRadius } from "../../geometry/corners.ts";
import { decimal } from "../../geometry/number.ts";
import { upToTenth } from "../../geometry/tenths.ts";
import { isUnder } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { designedWindow, windowRemedy } from "./designed-window.ts";
import { machinedParts, onePerCut, toolRadius } from "./machined.ts";

const entry: CodeEntry = {
  code: "checks/inside-corner",
  severity: "fault",
  title: "an inside corner tighter than the tool",
  why: "A round tool leaves its own radius in every inside corner. Round the window's corners by at least that, or give the workshop a smaller tool.",
  example:
    "# all sheets are cut by a router whose finest tool is 3.175 mm\nmarkings:\n  - window: { at: { x: 60 mm, y: 30 mm }, width: 20 mm, height: 10 mm, corner: 0.5 mm, layers: [face] }",
};

export const insideCorner: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    machinedParts(facts).flatMap((one) => {
      const { machine } = one;
      const radius = toolRadius(machine);
      if (radius === null) return [];
      return onePerCut(one, ({ cut, cutOut }) => {
        const window = designedWindow(cutOut.owner, facts.layout);
        const tightest = window === null ? null : tightestInsideRadius(cut.contour);
        if (window === null || tightest === null || !isUnder(tightest, radius)) return null;
        const works = `${decimal(upToTenth(radius), 1)} mm`;
        return finding(entry, {
          message: `${cutOut.owner}: its corners in ${one.layer.id} have a radius of ${millimetres(tightest, radius)} and the finest tool of ${machine.id} leaves ${millimetres(radius, tightest)}, ${millimetres(radius - tightest, 0)} more. corner: ${works} works.`,
          span: window.design.written.keys["corner"] ?? window.design.written.span,
          related: [{ what: machine.id, span: machine.written.span }],
          subjects: [cutOut.owner],
          measured: measureMm(tightest),
          limit: measureMm(radius),
          source: { kind: "machine", name: machine.id },
          remedies: windowRemedy(window, works, facts),
        });
      });
    }),
};
