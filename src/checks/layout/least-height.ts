// How high letters must be for what is asked of them: to be read from where the operator sits, and to be cut by the tool. Both
// findings name one height, the larger: a legend has one.

import { legendOf } from "../../layout/legend-of.ts";
import { cutWidthOf } from "../../layout/markings/style.ts";
import { CHARACTER_ANGLES, characterHeight } from "../../standards/characters.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts } from "../rule.ts";
import {
  type Lettered,
  type LetteringCause,
  letteredMarkings,
  letteringCause,
} from "./lettering-cause.ts";

/** Letters this much higher still go where they were meant to; beyond it the tool is wrong, not the height (house practice). */
export const MOST_GROWTH = 1.5;

export const toolOf = (marking: Lettered, facts: PanelFacts): number =>
  cutWidthOf(facts.layout.layers.find(({ id }) => id === marking.layer)?.machine ?? null);

export const isTooFine = (marking: Lettered, facts: PanelFacts): boolean =>
  marking.fills.length > 0 && isUnder(marking.strokeWidth, toolOf(marking, facts));

/** Legends under this angle are hard to read: the stricter of two editions. What alerts wants more. */
export const angleFor = (
  marking: Lettered,
  facts: PanelFacts,
): { readonly arcMinutes: number; readonly source: string } => {
  const alert = legendOf(marking, facts.layout)?.alert ?? "none";
  return alert === "none" ? CHARACTER_ANGLES.leastInRevision2 : CHARACTER_ANGLES.alerting;
};

export const readableHeight = (marking: Lettered, facts: PanelFacts): number =>
  characterHeight(facts.layout.design.viewingDistance, angleFor(marking, facts).arcMinutes);

/** At which all markings of that cause are read, and cut where the tool is not what is wrong. */
export const leastHeight = (cause: LetteringCause, facts: PanelFacts): number =>
  cause.height *
  Math.max(
    ...letteredMarkings(facts)
      .filter((marking) => letteringCause(marking, facts).key === cause.key)
      .flatMap((marking) => [
        readableHeight(marking, facts) / marking.capHeight,
        isTooFine(marking, facts) ? cutGrowth(marking, facts) : 0,
      ]),
  );

const cutGrowth = (marking: Lettered, facts: PanelFacts): number => {
  const growth = toolOf(marking, facts) / marking.strokeWidth;
  return growth > MOST_GROWTH ? 0 : growth;
};
