// Is a screw sold that holds the stack: long enough to bite, short enough not to meet the bottom of its hole.

import type { Screw } from "../../catalogue/hardware.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { BossFact } from "../../parts/printed/printed-facts.ts";
import type { PrintedPart } from "../../parts/printed/printed-part.ts";
import { type MetricThread, THREAD_DIAMETER } from "../../standards/metric-fasteners.ts";
import { isOver, isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/screw-length",
  severity: "query",
  title: "no screw of a length that is sold fits the stack",
  why: "A screw of the stack runs through every layer in front and must reach one diameter into its insert (common practice), and not to the bottom of the hole. Where the sold lengths jump over that, change a layer's depth by a millimetre or two, or cut a longer screw.",
  example: `stack:
  - { layer: backing, sheet: aluminium-2 }
  - { layer: gap, air: 31 mm }
  - { layer: spacer, print: black-petg, depth: 14 mm }
fixings: { screws: m3, dowels: 3 mm }`,
};

export const screwLength: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    facts.printedParts.flatMap((part) => {
      const boss = part.facts.bosses.find(({ kind }) => kind === "insert");
      const thread = facts.layout.design.fixings?.screws;
      return boss === undefined || thread === undefined
        ? []
        : judged(boss, { part, thread, facts });
    }),
};

interface Scene {
  readonly part: PrintedPart;
  readonly thread: MetricThread;
  readonly facts: PanelFacts;
}

/** From the thinnest to the thickest that the layers in front may be. */
const judged = (boss: BossFact, { part, thread, facts }: Scene): readonly Finding[] => {
  const { layout, catalogue } = facts;
  const owner = layout.layers.find(({ id }) => id === part.owner);
  if (owner === undefined) return [];
  const ahead = layout.layers.filter(({ index }) => index < owner.index);
  const sum = (end: "low" | "high"): number =>
    ahead.reduce((all, { thickness, paint }) => all + thickness[end] + 2 * paint[end], 0);
  const least = sum("high") + THREAD_DIAMETER[thread];
  const most = sum("low") + boss.depth;
  const sold = [...catalogue.hardware.values()]
    .filter((record): record is Screw => record.kind === "screw" && record.thread === thread)
    .filter(({ head }) => head !== "countersunk")
    .flatMap(({ lengths }) => lengths)
    .sort((a, b) => a - b);
  if (sold.some((length) => !isUnder(length, least) && !isOver(length, most))) return [];
  const shorter = sold.findLast((length) => length < least);
  const longer = sold.find((length) => length > most);
  const words = [
    shorter === undefined ? null : `${millimetres(shorter)} is too short`,
    longer === undefined ? null : `${millimetres(longer)} too long`,
  ].filter((word) => word !== null);
  return [
    finding(entry, {
      message: `The stack's ${thread} screws must be ${millimetres(least)} to ${millimetres(most)} long to bite in ${part.owner} and not meet the bottom; of those sold ${words.join(", ")}.`,
      span: owner.design.written.span,
      subjects: [part.owner],
      measured: measureMm(shorter ?? longer ?? 0),
      limit: measureMm(shorter === undefined ? most : least),
      source: { kind: "geometry", name: "layers in front, thread and hole" },
    }),
  ];
};
