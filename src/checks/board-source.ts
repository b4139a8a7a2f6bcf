// Whose limit a board's plugs are: its record's.

import { limitOfFigures } from "../catalogue/limit-of-figures.ts";
import type { Catalogue } from "../catalogue/record.ts";
import type { LimitSource } from "../diagnostics/finding.ts";

/** A board that stands on a tray is in the catalogue, or it would have found no place. */
export const boardSource = (board: string, { boards }: Catalogue): LimitSource => {
  const record = boards.get(board);
  return record === undefined ? { kind: "geometry", name: board } : limitOfFigures(record.figures);
};
