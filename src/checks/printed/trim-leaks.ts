// A trim whose lip does not cover the display's edge when the display lies aside in its hole.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { isTrimPart, type LipFact } from "../../parts/printed/trim-facts.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/trim-leaks",
  severity: "query",
  title: "a trim's lip that a display's play uncovers",
  why: "A display lies a few tenths loose in its hole. Pushed to one side, its edge must still be under the lip on the other, or its own light leaks out there in a line. A printed edge strays by a tenth or two, so that the lip covers that as well. A strip of tape in the hole takes the play out.",
  example: `stack:
  - { layer: face, sheet: opal-acrylic-3 }
  - { layer: backing, sheet: aluminium-2 }
components:
  depth: { part: seven-segment-4-056, at: centre, trim: { lip: 0.1 mm } }`,
};

/** More than the display's play. */
const COVER: HouseRule = {
  key: "lip-cover",
  usual: 0.2,
  name: "a lip of 0.2 mm more than the display's play, as far as printed edges stray (common practice)",
};

export const trimLeaks: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    facts.printedParts.filter(isTrimPart).flatMap(({ owner, span, trim: { lip } }) => {
      const cover = houseLimit(facts, COVER);
      const wanted = lip.play + cover.limit;
      if (lip.isGlassBehind || !isUnder(lip.overlap, wanted)) return [];
      return [
        finding(entry, {
          message: `The lip of ${owner}'s trim covers ${millimetres(lip.overlap, wanted)} of the display's edge; the display can lie ${millimetres(lip.play)} aside in its hole, and ${millimetres(wanted, lip.overlap)} keeps its light in, ${millimetres(wanted - lip.overlap, 0)} more. ${wayOut(lip, wanted)}`,
          span,
          subjects: [owner],
          measured: measureMm(lip.overlap),
          limit: measureMm(wanted),
          source: cover.source,
        }),
      ];
    }),
};

const wayOut = ({ toRead }: LipFact, wanted: number): string =>
  toRead !== null && isUnder(toRead, wanted)
    ? `What is read begins ${millimetres(toRead)} from the edge, so that no lip covers it: shim the display in its hole.`
    : `Write lip: ${millimetres(wanted)} or more, or shim the display in its hole.`;
