// A marking under what is fitted on the face, or where a lever, a needle or a screw's head comes.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm } from "../words.ts";
import { type FaceCover, faceCovers } from "./face-covers.ts";
import { type Clearing, clearingOf } from "./marking-clear.ts";
import { capitalised, isMarkedOn, isShown, markingName } from "./marking-shapes.ts";

const entry: CodeEntry = {
  code: "checks/marking-covered",
  severity: "query",
  title: "a marking under a knob, lever, needle, guard or screw head",
  why: "What is fitted on the face hides the marking, and so does a lever in one of its positions or a needle on its way. A lever is taken to turn about the plane that its part is seated on, and is looked at from straight ahead. It can be made; somebody must say that it should be.",
  example:
    "components:\n  volume: { part: pot-16, at: { x: 60 mm, y: 30 mm } }\nmarkings:\n  - legend: { text: MAX, at: { x: 60 mm, y: 40 mm } }",
};

export const markingCovered: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const covers = faceCovers(facts.layout);
    return facts.layout.markings.filter(isShown).flatMap((marking) => {
      const worst = worstOf(marking, covers, facts);
      if (worst === null) return [];
      const { cover: hidden, clearing } = worst;
      return [
        finding(entry, {
          message: `${capitalised(markingName(marking))} lies under the ${hidden.what} of ${hidden.owner}: ${clearing.advice}.`,
          span: marking.span,
          related: [{ what: hidden.owner, span: hidden.span }],
          subjects: [marking.owner, hidden.owner],
          measured: measureMm(clearing.measured),
          limit: measureMm(clearing.limit),
          source: { kind: "geometry", name: "what covers the face" },
          remedies: clearing.remedies,
        }),
      ];
    });
  },
};

interface Hidden {
  readonly cover: FaceCover;
  readonly clearing: Clearing;
}

/** What clears the cover that reaches farthest over it clears the others too. */
const worstOf = (
  marking: PlacedMarking,
  covers: readonly FaceCover[],
  facts: PanelFacts,
): Hidden | null =>
  covers
    .filter((cover) => isUnder(marking, cover))
    .map((cover) => ({ cover, clearing: clearingOf(marking, cover.box, facts) }))
    .reduce<Hidden | null>(
      (most, one) => (most === null || missing(one) > missing(most) ? one : most),
      null,
    );

const missing = ({ clearing: { limit, measured } }: Hidden): number => limit - measured;

const isUnder = (marking: PlacedMarking, cover: FaceCover): boolean => {
  const isOwnDial =
    cover.passesOwnDial &&
    marking.owner === cover.owner &&
    (marking.kind === "dial" || marking.kind === "scale");
  return !isOwnDial && isMarkedOn(marking, cover.contour, cover.box);
};
