// Legends whose capitals fill too small an angle at the operator's eye, from where the panel truly stands.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { type LegendSight, legendSights } from "../../fit/operator/sights.ts";
import { decimal, decimalBeside } from "../../geometry/number.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import { CHARACTER_ANGLES } from "../../standards/characters.ts";
import { byCause, heightRemedy, type LetteringFacts } from "../layout/lettering-cause.ts";
import { capitalised, markingName } from "../layout/marking-shapes.ts";
import { isUnder } from "../limits.ts";
import { lengthWords, measureOf } from "../words.ts";
import type { BayFacts, BayRule } from "./console-rule.ts";
import { andMore } from "./panel-words.ts";

const entry: CodeEntry = {
  code: "fit/legend-small-at-eye",
  severity: "query",
  title: "a legend too small for the eye that reads it",
  why: "What counts is the angle that a capital fills at the eye, at its true distance and foreshortened by the slant at which it is seen: 16 minutes of arc at the least, 20 for what alerts and for the legends of important controls. Both ends of the range of people are tried; the eye that sees it smaller decides. Turning the bay toward the eye helps as much as larger letters.",
  example:
    "operator: { seat-height: 430 mm, at: [-200, 0] }\nbays:\n  aft: { mount: console-rail, at: [400, -420, 620], along: [1, 0, 0], length: 20 modules, depth: 180 mm }",
};

/** Told by places alone, so that it comes with every check; on such panels their own viewing distance is not asked. */
export const legendSmallAtEye: BayRule = {
  entry,
  judge: (facts) => {
    const { operator, panels } = facts.layout;
    if (operator === null) return [];
    const small = legendSights(operator, panels).filter(
      (sight) =>
        sight.obliquity < FACING_AWAY && isUnder(sight.arcMinutes, angleFor(sight).arcMinutes),
    );
    return panels.flatMap((panel) =>
      smallOn(
        panel,
        small.filter((sight) => sight.panel === panel.name),
        facts,
      ),
    );
  },
};

/** What faces away is not small but hidden. */
const FACING_AWAY = 90;

/** What is important is read in a hurry: the preferred angle in place of the least. */
const angleFor = ({
  isAlerting,
  isImportant,
}: LegendSight): { readonly arcMinutes: number; readonly source: string } => {
  if (isAlerting) return CHARACTER_ANGLES.alerting;
  return isImportant ? CHARACTER_ANGLES.preferred : CHARACTER_ANGLES.leastInRevision2;
};

const smallOn = (
  panel: PlacedPanel,
  small: readonly LegendSight[],
  facts: BayFacts,
): readonly Finding[] => {
  const sights = new Map(small.map((sight) => [sight.marking, sight]));
  const lettering = { layout: panel.layout, edit: facts.edit, texts: facts.texts };
  const markings = panel.layout.markings.flatMap((marking) =>
    marking.capHeight !== null && sights.has(marking.id)
      ? [{ ...marking, capHeight: marking.capHeight }]
      : [],
  );
  const shortBy = ({ id }: { readonly id: string }): number => growthOf(sights.get(id)!);
  return byCause(markings, lettering, shortBy).map((group) =>
    tooSmall(group, sights.get(group.markings[0].id)!, lettering),
  );
};

/** Angles this small grow as heights do. */
const growthOf = (sight: LegendSight): number => angleFor(sight).arcMinutes / sight.arcMinutes;

const tooSmall = (
  { cause, markings }: ReturnType<typeof byCause>[number],
  sight: LegendSight,
  facts: LetteringFacts,
): Finding => {
  const [worst] = markings;
  const angle = angleFor(sight);
  const words = lengthWords(facts, cause.isOwn ? cause.span : undefined);
  const { text, remedies } = heightRemedy(cause, cause.height * growthOf(sight), facts);
  return finding(entry, {
    message: `${capitalised(markingName(worst))} on ${sight.panel}${andMore(markings.length - 1)}: capitals of ${words(sight.capHeight)} fill ${decimalBeside(sight.arcMinutes, angle.arcMinutes, 1)} minutes of arc, ${words(sight.distance)} from the eye and seen ${decimal(sight.obliquity, 0)}° aslant; ${decimalBeside(angle.arcMinutes, sight.arcMinutes, 1)} are wanted. height: ${text} does.`,
    span: cause.span,
    related: [{ what: worst.owner, span: worst.span }],
    subjects: [...new Set(markings.map(({ owner }) => `${sight.panel}/${owner}`))],
    measured: measureOf(sight.arcMinutes, "arcmin"),
    limit: measureOf(angle.arcMinutes, "arcmin"),
    source: { kind: "standard", name: angle.source },
    remedies,
    suppressed: markings.length - 1,
  });
};
