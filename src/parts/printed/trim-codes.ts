// What a trim can't be made as.

import type { CodeEntry } from "../../diagnostics/finding.ts";

const DISPLAY = (trim: string): string =>
  `components:\n  depth: { part: seven-segment-4-056, at: centre, trim: ${trim} }`;

export const TRIM_LOOSE: CodeEntry = {
  code: "parts/trim-loose",
  severity: "fault",
  title: "a trim with nothing to stand in",
  why: "A trim is snapped or screwed into the opening of a sheet in front of the display. Where the display is clamped to the front sheet itself there is no such opening: the trim can only be glued on.",
  example: `stack:\n  - { layer: face, sheet: black-acrylic-3 }\n${DISPLAY("{ fixing: snap }")}`,
};

export const TRIM_STOCK: CodeEntry = {
  code: "parts/unknown-fitted-stock",
  severity: "fault",
  title: "a filter, a diffuser or a print of a stock that nobody has",
  why: "Trims, lamp boxes and angled boxes name the stock that they are printed from, and the sheets that lie in them. Without the stock's record neither its thickness nor its opaque wall is known.",
  example: DISPLAY("{ filter: no-such-sheet }"),
};

export const TRIM_CODES: readonly CodeEntry[] = [TRIM_LOOSE, TRIM_STOCK];
