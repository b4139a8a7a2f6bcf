// A trim whose lip reaches over what is read of its display.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { isTrimPart } from "../../parts/printed/trim-facts.ts";
import { isOver } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { displaySource } from "./display-source.ts";

const entry: CodeEntry = {
  code: "checks/trim-hides-display",
  severity: "fault",
  title: "a trim's lip over the part of a display that is read",
  why: "A lip reaches in over the display's edge, where its light leaks, and no farther than to what is read. A wider lip cuts the outer characters off.",
  example: `stack:
  - { layer: face, sheet: opal-acrylic-3 }
  - { layer: backing, sheet: aluminium-2 }
components:
  depth: { part: seven-segment-4-056, at: centre, trim: { lip: 4 mm } }`,
};

export const trimHidesDisplay: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    facts.printedParts.filter(isTrimPart).flatMap(({ owner, span, trim: { lip } }) => {
      const { asked, toRead } = lip;
      if (asked === null || toRead === null || !isOver(asked, toRead)) return [];
      const way =
        toRead > 0
          ? `lip: ${millimetres(toRead)} is the most; left out, it reaches to the window`
          : "leave lip out: then it reaches to the window";
      return [
        finding(entry, {
          message: `The lip of ${owner}'s trim reaches ${millimetres(asked, toRead)} in over the display, and what is read begins ${millimetres(toRead, asked)} from its edge, ${millimetres(asked - toRead, 0)} too much: ${way}.`,
          span,
          subjects: [owner],
          measured: measureMm(asked),
          limit: measureMm(toRead),
          source: displaySource(owner, facts),
        }),
      ];
    }),
};
