// What a lamp box can't be made as.

import type { CodeEntry } from "../../diagnostics/finding.ts";

const WINDOWS = (pattern: string, box: string): string =>
  `components:\n  window: { ${pattern}, at: centre, lamp-box: ${box} }`;
const GRID =
  "grid: { part: lamp-window-18x12, columns: 2, rows: 2, pitch: 24 mm, row-pitch: 15 mm }";

export const LAMP_BOX_PATTERN: CodeEntry = {
  code: "parts/lamp-box-pattern",
  severity: "fault",
  title: "a lamp box behind windows that are no grid",
  why: "A lamp box has its cells in rows and columns, upright or lying. Windows in a ring, or turned by any other angle, have no walls in common: give each a box of its own.",
  example: WINDOWS("ring: { part: lamp-window-18x12, count: 3, radius: 30 mm }", "{}"),
};

export const LAMP_BOX_LEDS: CodeEntry = {
  code: "parts/lamp-box-leds",
  severity: "fault",
  title: "LEDs that a lamp box has no seats for",
  why: "LEDs stand evenly along a window, so that its whole text is lit, each in a round seat with plastic between it and the next. More or larger ones than the cell takes have no seats; and only a bare LED with a round rim is seated.",
  example: WINDOWS(GRID, "{ leds: 24 }"),
};

export const LAMP_BOX_CODES: readonly CodeEntry[] = [LAMP_BOX_PATTERN, LAMP_BOX_LEDS];
