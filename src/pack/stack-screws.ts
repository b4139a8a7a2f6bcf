// What holds the stack together: its screws, what they end in, its dowels. Lengths are those that are sold.
// Where no length reaches, the list says what is needed instead of naming a screw that is too short.

import type { Catalogue } from "../catalogue/record.ts";
import { decimal } from "../geometry/number.ts";
import { type StackScrewNeed, stackScrewNeed } from "../parts/screw-need.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { screwWords } from "./screw-words.ts";

export interface FixingRow {
  readonly count: number;
  readonly part: string;
  readonly title: string;
  readonly use: string;
}

export const stackScrews = (panel: PanelForPack): readonly FixingRow[] => {
  const { layout, printedParts, catalogue } = panel;
  const count = layout.fixings.filter(({ kind }) => kind === "screw").length;
  const dowels = layout.fixings.filter(({ kind }) => kind !== "screw");
  const need = count === 0 ? null : stackScrewNeed(layout, printedParts, catalogue);
  return [
    ...(need === null
      ? []
      : [
          { count, ...screwWords(need, catalogue), use: "stack" },
          ...endRows(need, count, catalogue),
        ]),
    ...dowels.map(({ id, diameter, kind }) => ({
      count: 1,
      part: `dowel-${decimal(diameter, 2)}`,
      title: `dowel pin, ${decimal(diameter, 2)} mm, ${kind === "dowel-round" ? "round hole" : "slotted hole"}`,
      use: id,
    })),
  ];
};

/** Inserts where the screws end in a printed part, else nuts. */
const endRows = (
  need: StackScrewNeed,
  count: number,
  { inserts }: Catalogue,
): readonly FixingRow[] => {
  switch (need.ends) {
    case "insert": {
      const insert = [...inserts.values()].find(
        ({ thread, length }) => thread === need.thread && length === need.boss.insert,
      );
      if (insert === undefined) return [];
      return [{ count, part: insert.id, title: insert.title, use: `stack, in ${need.owner}` }];
    }
    case "nut":
      return need.nut === null
        ? []
        : [{ count, part: need.nut.id, title: need.nut.title, use: "stack" }];
  }
};
