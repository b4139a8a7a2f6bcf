// What is said of a move: of a few things the numbers that their text has now, of many how far they went. Pure.

import { lengthIn, type WritingUnit } from "../../src/design/length-text.ts";
import { inWords } from "../../src/diagnostics/nearest.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";

/** More numbers than those of so many things nobody reads or hears to the end. */
const FEW = 3;

export interface Moved {
  readonly entries: readonly string[];
  readonly shift: Shift;
  /** The numbers of all of them: "x: 20 mm, y: 5 mm". */
  readonly says: string;
}

export const movedWords = ({ entries, shift, says }: Moved, unit: WritingUnit): string =>
  entries.length <= FEW
    ? `moved ${entries.join(", ")}: ${says}`
    : `moved ${entries.length} things ${wayWords(shift, unit)}`;

function wayWords({ x, y }: Shift, unit: WritingUnit): string {
  const length = (value: number): string => lengthIn(unit, Math.abs(value));
  const across = x === 0 ? [] : [`${length(x)} to the ${x < 0 ? "left" : "right"}`];
  const along = y === 0 ? [] : [`${length(y)} ${y < 0 ? "down" : "up"}`];
  return inWords([...across, ...along], "and");
}
