// Two things that want the same space: of two panels, or of a panel and the console.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { ConsoleBody } from "../../fit/console-body.ts";
import { decimal } from "../../geometry/number.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import { measureMm, millimetres } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { freeModuleRemedies } from "./free-module.ts";
import { causeOf, clashesByCause, hasPlug, judgedPairs, type PairOf } from "./pair-groups.ts";
import { bodyName, byCause } from "./panel-words.ts";
import { placeWords } from "./place-words.ts";

const entry: CodeEntry = {
  code: "fit/clash",
  severity: "fault",
  title: "two things in a console want the same space",
  why: "A lever that meets a neighbour's guard, a case that stands in a rib: one of the two can't be there. Solids are intersected; what shares less than a hundredth of a cubic millimetre only touches. Move a panel along its bay, or what is in its way.",
  example: "obstacles:\n  - { name: shelf, box: [40, 100, 30], at: [30, 0, 590] }",
};

export const clash: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(clashesByCause(judgedPairs(facts)).ofBodies, causeOf, (pair) =>
      hasPlug(pair) ? 0 : pair.relation.volume,
    ).map(([worst, ...others]) => clashing(worst, others.length, facts)),
};

const clashing = (pair: PairOf<"clash">, others: number, facts: ConsoleFacts): Finding => {
  const { a, b, relation } = pair;
  const { at, volume, depth, isWithin } = relation;
  const [subject, other] = moved(a, b, facts);
  const where = placeWords(at, [subject.panel, other.panel], facts.layout);
  const how = isWithin
    ? "one stands wholly within the other"
    : `they share ${decimal(volume, 2)} mm³, ${millimetres(depth)} deep`;
  return finding(entry, {
    message: `The ${bodyName(subject)} and the ${bodyName(other)} want the same space: ${how}, ${where}.`,
    span: subject.span,
    related: [{ what: bodyName(other), span: other.span }],
    subjects: [subject.id, other.id],
    measured: measureMm(-depth),
    limit: measureMm(0),
    source: { kind: "geometry", name: "the surface of the other solid" },
    remedies: freeModuleRemedies(panelOf(subject, facts), facts),
    suppressed: others,
  });
};

/** Of two panels the one that comes later in the console; else the one panel there is. */
const moved = (
  a: ConsoleBody,
  b: ConsoleBody,
  { layout }: ConsoleFacts,
): readonly [ConsoleBody, ConsoleBody] => {
  const place = ({ panel }: ConsoleBody): number =>
    layout.panels.findIndex(({ name }) => name === panel);
  return place(a) > place(b) ? [a, b] : [b, a];
};

const panelOf = ({ panel }: ConsoleBody, { layout }: ConsoleFacts): PlacedPanel | undefined =>
  layout.panels.find(({ name }) => name === panel);
