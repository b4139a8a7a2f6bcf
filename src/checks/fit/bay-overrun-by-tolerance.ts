// Panels that are butted one against the next, and whose tolerances may add up to more than the bay has left.

import { spanOf } from "../../design/written.ts";
import {
  type CodeEntry,
  type Finding,
  finding,
  type LimitSource,
} from "../../diagnostics/finding.ts";
import type { ToleranceFact } from "../../fit/fit-facts.ts";
import { decimal } from "../../geometry/number.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import { isOver } from "../limits.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";

const entry: CodeEntry = {
  code: "fit/bay-overrun-by-tolerance",
  severity: "query",
  title: "tolerances that may add up to more than is free in a bay",
  why: "A panel on studs of its own is where its holes are, and passes no error on. Panels butted one against the next add theirs up: eight of 0.1 mm to each side may be 1.6 mm longer at the worst, and seldom more than the root sum square, 0.4 mm. Leave the worst case free, or cut and try.",
  example:
    "bays:\n  wall: { mount: corner-screws, at: [500, 0, 900], along: [0, 0, 1], length: 400 mm, depth: 100 mm }",
};

export const overrunByTolerance: ConsoleRule = {
  entry,
  judge: (facts) =>
    facts.fit.tolerances.flatMap((sum) => {
      const bay = facts.layout.bays.find(({ id }) => id === sum.bay);
      // Panels that are longer than the bay at nominal size are told so elsewhere.
      const isTold = sum.free < 0 || sum.shares.length === 0;
      return bay === undefined || isTold || !isOver(sum.worstCase, sum.free)
        ? []
        : [overrun(sum, bay, facts)];
    }),
};

const overrun = (sum: ToleranceFact, bay: BayLayout, facts: ConsoleFacts): Finding => {
  const span = spanOf(bay.design.written, "length");
  const words = lengthWords(facts, span);
  const { free, worstCase, rootSumSquare, shares } = sum;
  const [largest] = shares;
  const most =
    largest === undefined
      ? ""
      : ` ${largest.what} has the most of it, ${words(largest.plusMinus)}.`;
  const length = `${decimal(Math.ceil((bay.length + worstCase - free) * 100 - samePlace) / 100, 2)} mm`;
  return finding(entry, {
    message: `Bay ${bay.id}: ${words(free, worstCase)} are free at nominal size, and its butted panels may be ${words(worstCase, free)} longer at the worst, ${words(rootSumSquare)} as a root sum square.${most} A length of ${length} holds the worst.`,
    span,
    subjects: [bay.id, ...shares.map(({ what }) => what)],
    measured: measureMm(worstCase),
    limit: measureMm(free),
    source: sourceOf(shares),
    remedies:
      bay.mount.height.unit === "mm"
        ? [{ title: `length: ${length}`, edits: [facts.edit(span, length)] }]
        : [],
  });
};

const CUT_UNDER = "what the mount cuts a panel under nominal, at each of its ends";

/** The standard's table ends at 1000 mm. */
const sourceOf = (shares: ToleranceFact["shares"]): LimitSource => {
  if (shares.every(({ by }) => by === "undersize"))
    return { kind: "geometry", name: `${CUT_UNDER}; ISO 2768-1 gives nothing over 1000 mm` };
  const name = "ISO 2768-1 class m for each panel's length";
  return shares.every(({ by }) => by === "general")
    ? { kind: "standard", name }
    : { kind: "standard", name: `${name} up to 1000 mm; over that, ${CUT_UNDER}` };
};
