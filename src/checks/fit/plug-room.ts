// Plugs, with the bend of their cables, that have no room in the console.

import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import {
  type CodeEntry,
  type Finding,
  finding,
  type LimitSource,
} from "../../diagnostics/finding.ts";
import type { ConsoleBody } from "../../fit/console-body.ts";
import { boardSource } from "../board-source.ts";
import { measureMm, millimetres } from "../words.ts";
import { turnedBoardRemedies } from "./board-turned.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { causeOf, clashesByCause, isPlug, judgedPairs, type PairOf } from "./pair-groups.ts";
import { bodyName, byCause } from "./panel-words.ts";
import { placeWords } from "./place-words.ts";
import { roomBefore } from "./plug-mouth.ts";

const entry: CodeEntry = {
  code: "fit/plug-room",
  severity: "fault",
  title: "a plug without room for the bend of its cable",
  why: "A plug needs its own length and the bend of its cable before anything stands in its way; a cable that is bent sharper breaks, or pulls its plug out. Turn the board, move the panel, or take an angled plug and write its figures.",
  example: "envelope:\n  ribs: [{ name: middle, at: 90, thickness: 18 }]",
};

export const plugRoom: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(
      clashesByCause(judgedPairs(facts)).ofPlugs,
      causeOf,
      ({ relation }) => relation.depth,
    ).map(([worst, ...others]) => cramped(worst, others.length, facts)),
};

const cramped = (pair: PairOf<"clash">, others: number, facts: ConsoleFacts): Finding => {
  const [plug, other] = isPlug(pair.a) ? [pair.a, pair.b] : [pair.b, pair.a];
  const { at } = pair.relation;
  const { needs, has } = roomBefore(plug, other, facts.fit.bodies);
  const where = placeWords(at, [plug.panel, other.panel], facts.layout);
  return finding(entry, {
    message: `The ${bodyName(plug)} needs ${millimetres(needs, has)} with the bend of its cable; the ${bodyName(other)} leaves ${millimetres(has, needs)}, ${millimetres(needs - has, 0)} too little, ${where}.`,
    span: plug.span,
    related: [{ what: bodyName(other), span: other.span }],
    subjects: [plug.id, other.id],
    measured: measureMm(has),
    limit: measureMm(needs),
    source: sourceOf(plug, facts),
    remedies: turnedBoardRemedies(plug, facts),
    suppressed: others,
  });
};

/** A plug hangs on a component of its panel, or on a board of a tray. */
const sourceOf = (plug: ConsoleBody, { layout, catalogue }: ConsoleFacts): LimitSource => {
  const component = layout.panels
    .find(({ name }) => name === plug.panel)
    ?.layout.components.find(({ id }) => id === plug.thing);
  if (component === undefined) return boardSource(plug.thing, catalogue);
  const fitted = component.fitted.find(({ kind }) => kind === "plug");
  return limitOfFigures((fitted ?? component.part).figures);
};
