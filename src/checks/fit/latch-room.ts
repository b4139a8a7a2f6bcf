// Plugs whose latch no thumb comes to.

import { figureSource } from "../../catalogue/figure-source.ts";
import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import type { Figures } from "../../catalogue/part.ts";
import {
  type CodeEntry,
  type Finding,
  finding,
  type LimitSource,
} from "../../diagnostics/finding.ts";
import type { ConsoleBody } from "../../fit/console-body.ts";
import type { LatchFact } from "../../fit/fit-facts.ts";
import { measureMm, millimetres } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { latchRemedies } from "./latch-remedies.ts";
import { wantSameStretch } from "./pair-groups.ts";
import { bodyName, byCause } from "./panel-words.ts";
import { placeWords } from "./place-words.ts";

const entry: CodeEntry = {
  code: "fit/latch-room",
  severity: "query",
  title: "a plug's latch without room for a thumb",
  why: "A plug with a latch is let go by a thumb that presses it. Where something stands before the latch, the plug goes in and does not come out again without a tool, or a panel half taken out. The room that a thumb wants is written in the record of the part or of the board.",
  example: "envelope:\n  ribs: [{ name: middle, at: 60, thickness: 18 }]",
};

export const latchRoom: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(
      facts.fit.latches.filter((fact) => !isOfOverlap(fact, facts)),
      ({ latch }) => latch.id,
      ({ needs, has }) => needs - has,
    ).map(([worst, ...others]) => barred(worst, others.length, facts)),
};

/** Panels that lie in one place are told of by `fit/panels-overlap`. */
const isOfOverlap = ({ latch, other }: LatchFact, { layout }: ConsoleFacts): boolean => {
  const [one, two] = [latch, other].map(
    (body) => layout.panels.find(({ name }) => name === body?.panel)?.place,
  );
  return wantSameStretch(one, two);
};

const barred = (
  { latch, other, needs, has, at }: LatchFact,
  others: number,
  facts: ConsoleFacts,
): Finding => {
  const name = other === null ? "edge of the console's inside" : bodyName(other);
  const where = placeWords(at, [latch.panel], facts.layout);
  const lack = millimetres(needs - has, 0);
  const remedies = latchRemedies(latch, other, facts);
  const advice =
    remedies.length > 0 ? "" : ` ${lack} more between the two would do, or a plug without a latch.`;
  return finding(entry, {
    message: `The ${bodyName(latch)} needs ${millimetres(needs, has)} for a thumb; the ${name} leaves ${millimetres(has, needs)}, ${lack} too little, ${where}.${advice}`,
    span: latch.span,
    related: other === null ? [] : [{ what: name, span: other.span }],
    subjects: [latch.id, ...(other === null ? [] : [other.id])],
    measured: measureMm(has),
    limit: measureMm(needs),
    source: sourceOf(latch, facts),
    remedies,
    suppressed: others,
  });
};

/** A latch is of a component's plug, or of a plug of a board on a tray. */
const sourceOf = (latch: ConsoleBody, { layout, catalogue }: ConsoleFacts): LimitSource => {
  const part = layout.panels
    .find(({ name }) => name === latch.panel)
    ?.layout.components.find(({ id }) => id === latch.thing)?.part;
  if (part !== undefined) return sourceIn(part.figures, "latch.out");
  const board = catalogue.boards.get(latch.thing);
  const plug = board?.connectors.find(({ name }) => latch.id.endsWith(`/${name}/latch`));
  return board === undefined || plug === undefined
    ? { kind: "geometry", name: latch.thing }
    : sourceIn(board.figures, `connectors.${plug.name}.latch.out`);
};

const sourceIn = (figures: Figures, path: string): LimitSource =>
  limitOfFigures(figureSource(figures, path));
