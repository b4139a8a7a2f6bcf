// How many things a row, column, grid or ring sets out.

import type { PatternDesign } from "./panel-design.ts";

/** null: one by itself. */
export const patternCount = (pattern: PatternDesign | null): number => {
  if (pattern === null) return 1;
  return pattern.kind === "grid" ? pattern.rows * pattern.columns : pattern.count;
};
