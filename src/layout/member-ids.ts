// What the members of a row, column, grid or ring are called: `warn.1`, `warn.2` ... in reading order; one by itself by its own name.

import type { PatternDesign } from "../design/panel-design.ts";
import { patternCount } from "../design/pattern-count.ts";

export const memberIds = (id: string, pattern: PatternDesign | null): readonly string[] =>
  pattern === null
    ? [id]
    : Array.from({ length: patternCount(pattern) }, (_, index) => `${id}.${index + 1}`);
