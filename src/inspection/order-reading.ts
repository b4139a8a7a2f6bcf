// The order in which a machine meets the lines of a file: marks, then openings from small to large, then the outline,
// because a piece that is free moves. One row; the first line out of order is named.

import { areaAllowance } from "./allowance.ts";
import type { DrawnLine } from "./drawn-line.ts";
import { loopArea, loopLength } from "./loop.ts";
import type { Reading } from "./row.ts";

const EXPECTED = "marks, drilled holes, openings small to large, outline";

export const orderReading = (lines: readonly DrawnLine[]): Reading => {
  const fault = firstOutOfTurn(lines) ?? firstLargeBeforeSmall(lines);
  return {
    feature: "sheet",
    what: "order",
    expected: EXPECTED,
    measured: fault ?? EXPECTED,
    difference: null,
    passed: fault === null,
  };
};

/** A witness in the waste may stand anywhere before the outline. */
const RANKS: ReadonlyMap<string, number> = new Map([
  ["engrave", 1],
  ["score", 1],
  ["drill", 2],
  ["cut-inner", 2],
  ["cut-outer", 3],
]);

const firstOutOfTurn = (lines: readonly DrawnLine[]): string | null => {
  let highest = { rank: 0, process: "" };
  for (const { process } of lines) {
    const rank = RANKS.get(process);
    if (rank === undefined) {
      if (highest.rank === RANKS.get("cut-outer")) return `${process} after ${highest.process}`;
      continue;
    }
    if (rank < highest.rank) return `${process} after ${highest.process}`;
    highest = { rank, process };
  }
  return null;
};

const firstLargeBeforeSmall = (lines: readonly DrawnLine[]): string | null => {
  let before: { readonly line: DrawnLine; readonly area: number } | null = null;
  for (const line of lines) {
    if (line.process !== "cut-inner") continue;
    const area = Math.abs(loopArea(line.edges));
    if (before !== null && area < before.area - areaAllowance(loopLength(line.edges))) {
      return `${nameOf(line)} after the larger ${nameOf(before.line)}`;
    }
    before = { line, area };
  }
  return null;
};

const nameOf = (line: DrawnLine): string => line.name ?? "opening";
