// Controls of two panels too close for a hand: the table that holds on one panel holds from one to the next.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { HandFact, HandPlace } from "../../fit/fit-facts.ts";
import { handSource } from "../hand-source.ts";
import { isUnder } from "../limits.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { handsApart } from "./hands-apart.ts";
import { andMore, byCause, inPanel } from "./panel-words.ts";

const entry: CodeEntry = {
  code: "fit/hands-across-panels",
  severity: "query",
  title: "controls of two panels too close for a hand",
  why: "A panel is judged by itself; the hand does not know where one ends. The published tables give the least free distance between two controls, edge to edge, for a bare hand. A blanking panel of a module or two between the panels does, or a control moved inward on its own.",
  example:
    "panels:\n  - { file: a.yaml, as: a, bay: aft, module: 0 }\n  - { file: b.yaml, as: b, bay: aft, after: a }",
};

export const handsAcrossPanels: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(
      facts.fit.hands.filter(({ gap, needs }) => isUnder(gap, needs)),
      ({ a, b }) => `${a.panel} ${b.panel}`,
      ({ gap, needs }) => needs - gap,
    ).map((group) => tooClose(group, facts)),
};

const tooClose = (group: readonly [HandFact, ...HandFact[]], facts: ConsoleFacts): Finding => {
  const [{ a, b, gap, needs, source }, ...others] = group;
  const words = lengthWords(facts, b.span);
  return finding(entry, {
    message: `${inPanel(a)} and ${inPanel(b)}${andMore(others.length)} leave ${words(gap, needs)} between them for a hand; a ${holdOf(a)} beside a ${holdOf(b)} wants ${words(needs, gap)}, ${words(needs - gap, 0)} more.`,
    span: b.span,
    related: [{ what: inPanel(a), span: a.span }],
    subjects: [inPanel(b), inPanel(a)],
    measured: measureMm(gap),
    limit: measureMm(needs),
    source: handSource(source),
    remedies: handsApart(b, a, facts),
    suppressed: others.length,
  });
};

const holdOf = ({ hand }: HandPlace): string => hand.replaceAll("-", " ");
