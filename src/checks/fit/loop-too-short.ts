// Looms too short to lay their panel on its face beside its place.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import type { LoopFact } from "../../fit/fit-facts.ts";
import { decimal } from "../../geometry/number.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import { keyRemedy } from "../key-remedy.ts";
import { isUnder } from "../limits.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { asSeverity } from "./panel-words.ts";
import { loopSource } from "./service-limits.ts";

const entry: CodeEntry = {
  code: "fit/loop-too-short",
  severity: "query",
  title: "a service loop too short to lay its panel down",
  why: "A panel is worked on lying on its face on its neighbour, with its loom plugged in. The loop runs from the tie over the edge that the two share to the plug, with a hand's width of slack. Where nothing is written of a panel's loop, a note says how long it must be.",
  example: "panels:\n  - { file: a.yaml, as: a, bay: aft, module: 0, loop: 200 mm }",
};

export const loopTooShort: ConsoleRule = {
  entry,
  judge: (facts) =>
    facts.fit.loops.flatMap((loop) => {
      const panel = facts.layout.panels.find(({ name }) => name === loop.panel);
      if (panel === undefined) return [];
      if (loop.has === null) return [asSeverity(unwritten(loop, panel, facts), "note")];
      return isUnder(loop.has, loop.needs) ? [tooShort(loop, panel, loop.has, facts)] : [];
    }),
};

/** Looms are cut to the centimetre. */
const CENTIMETRE = 10;

const roundLoop = ({ needs }: LoopFact): string =>
  `${decimal(Math.ceil(needs / CENTIMETRE) * CENTIMETRE, 0)} mm`;

const placeWords = ({ onto }: LoopFact): string =>
  onto === null ? "beside its place" : `on ${onto}`;

const unwritten = (loop: LoopFact, panel: PlacedPanel, facts: ConsoleFacts): Finding =>
  finding(entry, {
    message: `${loop.panel}: nothing is written of its loop. loop: ${roundLoop(loop)} lays it on its face ${placeWords(loop)}.`,
    span: panel.use.written.span,
    subjects: [loop.panel],
    source: loopSource(facts),
    remedies: written(loop, panel, facts),
  });

const tooShort = (
  loop: LoopFact,
  panel: PlacedPanel,
  has: number,
  facts: ConsoleFacts,
): Finding => {
  const span = spanOf(panel.use.written, "loop");
  const words = lengthWords(facts, span);
  const text = roundLoop(loop);
  return finding(entry, {
    message: `${loop.panel}: a loop of ${words(has, loop.needs)} does not lay it on its face ${placeWords(loop)}; ${words(loop.needs, has)} does, ${words(loop.needs - has, 0)} more. loop: ${text}.`,
    span,
    related:
      loop.plug === null ? [] : [{ what: `plug of ${loop.plug.thing}`, span: loop.plug.span }],
    subjects: [loop.panel],
    measured: measureMm(has),
    limit: measureMm(loop.needs),
    source: loopSource(facts),
    remedies: [{ title: `loop: ${text}`, edits: [facts.edit(span, text)] }],
  });
};

/** Blanking panels have nothing on them, so that a panel with a loom is a use and an item of the list. */
const written = (loop: LoopFact, { use }: PlacedPanel, facts: ConsoleFacts): readonly Remedy[] => {
  const { panels, blankings, file } = facts.layout.design;
  const items = [...panels, ...blankings]
    .map((one) => one.written.span.start)
    .toSorted((a, b) => a - b);
  const index = items.indexOf(use.written.span.start);
  if (index < 0) return [];
  return [
    keyRemedy(facts, { file, path: ["panels", `${index}`], key: "loop", value: roundLoop(loop) }),
  ];
};
