// What a trim can't be made as.

import type { CodeEntry } from "../../diagnostics/finding.ts";

const DISPLAY = (trim: string): string =>
  `components:\n  depth: { part: seven-segment-4-056, at: centre, trim: ${trim} }`;

export const TRIM_HIDES: CodeEntry = {
  code: "parts/trim-hides-display",
  severity: "fault",
  title: "a trim's lip over the part of a display that is read",
  why: "A lip reaches in over the display's edge, where its light leaks, and no farther than to what is read. A wider lip cuts the outer characters off.",
  example: DISPLAY("{ lip: 4 mm }"),
};

export const TRIM_LEAKS: CodeEntry = {
  code: "parts/trim-leaks",
  severity: "query",
  title: "a trim's lip that a display's play uncovers",
  why: "A display lies a few tenths loose in its hole. Pushed to one side, its edge must still be under the lip on the other, or its own light leaks out there in a line. A strip of tape in the hole takes the play out.",
  example: DISPLAY("{ lip: 0.1 mm }"),
};

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

export const TRIM_CODES: readonly CodeEntry[] = [TRIM_HIDES, TRIM_LEAKS, TRIM_LOOSE, TRIM_STOCK];
