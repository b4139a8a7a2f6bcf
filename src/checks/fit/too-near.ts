// Two things of different panels, or of a panel and the console, with less between them than the table asks for.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { isUnder } from "../limits.ts";
import { measureMm, millimetres } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { freeModuleRemedies } from "./free-module.ts";
import { type NearLimit, nearLimit } from "./near-limits.ts";
import { causeOf, judgedPairs, type PairOf, pairsOfKind } from "./pair-groups.ts";
import { bodyName, byCause } from "./panel-words.ts";
import { placeWords } from "./place-words.ts";

const entry: CodeEntry = {
  code: "fit/too-near",
  severity: "query",
  title: "two things in a console that come too near one another",
  why: "They don't meet by their figures, but a cutter's tenth, a bent tail or a hand on the lever is enough. Levers and knobs want 3 mm from everything that is not their own panel's, bodies 2 mm from wood and 1 mm from a neighbour, sheets what their mount cuts them under nominal.",
  example: "obstacles:\n  - { name: shelf, box: [40, 100, 30], at: [30, 0, 587] }",
};

export const tooNear: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(
      pairsOfKind(judgedPairs(facts), "apart").flatMap((pair) => nearOf(pair, facts)),
      ({ pair }) => causeOf(pair),
      ({ pair, limit }) => limit.room - pair.relation.gap,
    ).map(([worst, ...others]) => nearing(worst, others.length, facts)),
};

interface Near {
  readonly pair: PairOf<"apart">;
  readonly limit: NearLimit;
}

const nearOf = (pair: PairOf<"apart">, facts: ConsoleFacts): readonly Near[] => {
  const limit = nearLimit(pair.a, pair.b, facts);
  return limit !== null && isUnder(pair.relation.gap, limit.room - MEASURED)
    ? [{ pair, limit }]
    : [];
};

/** Gaps beside curves come out right to a few thousandths: no query for less than a hundredth. */
const MEASURED = 0.01;

const nearing = ({ pair, limit }: Near, others: number, facts: ConsoleFacts): Finding => {
  const { gap, at } = pair.relation;
  const [subject, other] = pair.b.panel === null ? [pair.a, pair.b] : [pair.b, pair.a];
  const where = placeWords(at, [subject.panel, other.panel], facts.layout);
  const panel = facts.layout.panels.find(({ name }) => name === subject.panel);
  return finding(entry, {
    message: `The ${bodyName(subject)} comes within ${millimetres(gap, limit.room)} of the ${bodyName(other)}, ${where}: ${millimetres(limit.room, gap)} is wanted, ${millimetres(limit.room - gap, 0)} more.`,
    span: subject.span,
    related: [{ what: bodyName(other), span: other.span }],
    subjects: [subject.id, other.id],
    measured: measureMm(gap),
    limit: measureMm(limit.room),
    source: limit.source,
    remedies: freeModuleRemedies(panel, facts),
    suppressed: others,
  });
};
