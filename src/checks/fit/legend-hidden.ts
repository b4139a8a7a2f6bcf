// Legends that the operator does not see: behind something, or on a panel that faces away.

import { entryName } from "../../design/entry-name.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { SightFact } from "../../fit/fit-facts.ts";
import { decimal } from "../../geometry/number.ts";
import { measureOf } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { andMore, bodyName, byCause } from "./panel-words.ts";

const entry: CodeEntry = {
  code: "fit/legend-hidden",
  severity: "query",
  title: "a legend that the operator does not see",
  why: "Seen aslant, a lever, a guard or a neighbouring panel stands before what is written behind it. A legend counts as hidden where half of it or more is, from either end of the range of people. Put it on the other side of its control, or move what hides it.",
  example:
    "operator: { seat-height: 430 mm, at: [0, 0] }\nobstacles:\n  - { name: screen, box: [300, 4, 190], at: [50, -300, 600] }",
};

export const legendHidden: ConsoleRule = {
  entry,
  judge: (facts) => {
    const unseen = facts.fit.sights.filter((sight) => isAway(sight) || sight.hiddenBy !== null);
    const cause = (sight: SightFact): string =>
      `${sight.panel} ${isAway(sight) ? "" : `${sight.hiddenBy?.panel} ${entryName(sight.hiddenBy?.thing ?? "")}`}`;
    return byCause(unseen, cause, () => 0).map((group) => hidden(group, facts));
  },
};

const SQUARE = 90;

const isAway = ({ obliquity }: SightFact): boolean => obliquity >= SQUARE;

const hidden = (group: readonly [SightFact, ...SightFact[]], facts: ConsoleFacts): Finding => {
  const [first] = group;
  const who = `${textOf(first, facts)}${andMore(group.length - 1)} on ${first.panel}`;
  const { hiddenBy } = first;
  const shared = {
    span: first.span,
    subjects: group.map(({ panel, owner }) => `${panel}/${owner}`),
    suppressed: group.length - 1,
  };
  if (isAway(first) || hiddenBy === null)
    return finding(entry, {
      ...shared,
      message: `${who} faces away from the operator: the eye is ${decimal(first.obliquity, 0)}° off the panel's normal, and under ${SQUARE}° it is seen.`,
      measured: measureOf(first.obliquity, "deg"),
      limit: measureOf(SQUARE, "deg"),
      source: { kind: "geometry", name: "the line of sight" },
    });
  return finding(entry, {
    ...shared,
    message: `${who} stands behind the ${bodyName(hiddenBy)}, seen from the operator's eye. Put it on the other side of its control, or move what hides it.`,
    related: [{ what: bodyName(hiddenBy), span: hiddenBy.span }],
    source: { kind: "geometry", name: "the line of sight" },
  });
};

const textOf = ({ panel, marking, owner }: SightFact, { layout }: ConsoleFacts): string => {
  const text = layout.panels
    .find(({ name }) => name === panel)
    ?.layout.markings.find(({ id }) => id === marking)?.text;
  return text === null || text === undefined
    ? owner
    : `"${text.replaceAll("\n", " / ")}" (${owner})`;
};
