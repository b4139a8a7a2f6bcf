// How many things a row, column, grid or ring sets out.

import type { PatternDesign } from "./panel-design.ts";

export const patternCount = (pattern: PatternDesign): number =>
  pattern.kind === "grid" ? pattern.rows * pattern.columns : pattern.count;
