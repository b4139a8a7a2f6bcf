// A pocket of an unlit printed part that leaves too little beside it, or breaks out. Lit parts need an opaque wall there,
// and say so themselves.

import { type CodeEntry, finding, type Remedy } from "../../diagnostics/finding.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import { plainRegion } from "../../parts/printed/grown-regions.ts";
import { edgeRoom } from "../../parts/printed/pocket-edge.ts";
import { spacerOutline } from "../../parts/printed/spacer-outline.ts";
import { isUnder } from "../limits.ts";
import { firstMove } from "../move-remedy.ts";
import { inwardWays } from "../move-ways.ts";
import type { Shift } from "../place-trouble.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { spanOfOwner } from "./seen-lamps.ts";
import { twoLines, twoLinesSource } from "./two-lines.ts";

const entry: CodeEntry = {
  code: "checks/pocket-breaks",
  severity: "query",
  title: "a pocket that breaks the wall of a printed part",
  why: "A wall of less than two lines is not printed as a wall: it is left out, or it splits. Move the component inward, or let the pocket be open to the edge and mind the sharp ends.",
  example: `mount: console-rail
stack:
  - { layer: backing, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm }
components:
  a: { part: pot-16, at: { left: 19 mm, y: 60 mm } }`,
};

export const pocketBreaks: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    facts.printedParts
      .filter(({ role, facts: { rim } }) => role === "spacer" && rim === null)
      .flatMap(({ owner: layer, printer, facts: { pockets } }) =>
        pockets.flatMap(({ owner, edge }) => {
          const limit = twoLines(printer);
          if (!isUnder(edge, limit)) return [];
          return [
            finding(entry, {
              message: `${owner}: its pocket ${leftOf(edge, limit, layer)}; two lines of the printer are ${millimetres(limit, edge)}, ${millimetres(limit - edge, 0)} more.`,
              span: spanOfOwner(owner, facts),
              subjects: [owner],
              measured: measureMm(edge),
              limit: measureMm(limit),
              source: twoLinesSource(printer),
              remedies: inward(owner, limit, facts),
            }),
          ];
        }),
      ),
};

/** Toward the middle, as far as every pocket of it leaves what is wanted. */
const inward = (owner: string, limit: number, facts: PanelFacts): readonly Remedy[] => {
  const component = facts.layout.components.find(({ id }) => id === owner);
  const outline = spacerOutline(facts.layout);
  if (component === undefined || outline === null) return [];
  const pockets = facts.printedParts
    .filter(({ role }) => role === "spacer")
    .flatMap(({ facts: of }) => of.pockets)
    .filter((pocket) => pocket.owner === owner);
  const suits = ({ x, y }: Shift): boolean =>
    pockets.every(({ contours }) => {
      const regions = contours.map((one) => plainRegion(placedContour(one, placement(x, y))));
      return !isUnder(edgeRoom({ owner, regions }, outline), limit);
    });
  return firstMove(inwardWays(component.at, facts.layout), { component, suits }, facts);
};

const leftOf = (edge: number, limit: number, layer: string): string =>
  edge < 0
    ? `breaks out of ${layer} by ${millimetres(-edge)}`
    : `leaves ${millimetres(edge, limit)} of ${layer} at the edge`;
