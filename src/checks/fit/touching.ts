// Two things of different panels, or of a panel and the console, with nothing between them.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { freeModuleRemedies } from "./free-module.ts";
import { causeOf, judgedPairs, type PairOf, pairsOfKind } from "./pair-groups.ts";
import { bodyName, byCause } from "./panel-words.ts";
import { placeWords } from "./place-words.ts";

const entry: CodeEntry = {
  code: "fit/touching",
  severity: "query",
  title: "two things in a console that touch",
  why: "By their figures there is nothing between the two. Wood swells, paint builds up, saws wander: they will meet, or rattle. A panel on its rails, and on the tabs of ribs that end flush with them, is meant to touch and is not asked about; anything else needs a person to say that it may.",
  example: "obstacles:\n  - { name: shelf, box: [40, 100, 30], at: [30, 0, 588] }",
};

export const touching: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(pairsOfKind(judgedPairs(facts), "touching"), causeOf, () => 0).map(
      ([first, ...others]) => touches(first, others.length, facts),
    ),
};

const touches = (pair: PairOf<"touching">, others: number, facts: ConsoleFacts): Finding => {
  const [subject, other] = pair.b.panel === null ? [pair.a, pair.b] : [pair.b, pair.a];
  const where = placeWords(pair.relation.at, [subject.panel, other.panel], facts.layout);
  const panel = facts.layout.panels.find(({ name }) => name === subject.panel);
  return finding(entry, {
    message: `The ${bodyName(subject)} touches the ${bodyName(other)}: nothing is left between them, ${where}. Move one of them by the room that it shall have.`,
    span: subject.span,
    related: [{ what: bodyName(other), span: other.span }],
    subjects: [subject.id, other.id],
    source: { kind: "geometry", name: "the least distance of two solids" },
    measured: measureMm(0),
    limit: measureMm(0),
    remedies: freeModuleRemedies(panel, facts),
    suppressed: others,
  });
};
