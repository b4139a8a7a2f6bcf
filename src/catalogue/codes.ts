// Codes for a project's own catalogue records, for `why CODE`.

import type { CodeEntry } from "../diagnostics/finding.ts";

export const RECORD_FAULT: CodeEntry = {
  code: "catalogue/record-fault",
  severity: "fault",
  title: "A record of a part contradicts itself or what it is fitted with",
  why: "A record is proved before anything is cut from it: the bush goes through its hole, the nut covers the hole and leaves thread for the grip, the body lies on the side it is fitted from, the window lies inside the glass, every number has a source. A record that fails is left out, because every panel with that part would be wrong.",
  example: "parts:\n  my-toggle: { hold: { by: bush, length: 3 mm, grip: [1, 6], ... }, ... }",
};

export const RECORD_REPLACES: CodeEntry = {
  code: "catalogue/record-replaces",
  severity: "note",
  title: "A record of yours takes the place of a built-in one",
  why: "A record under the name of a built-in one is used instead of it, everywhere in the design. Give it a name of its own where that is not meant.",
  example: "parts:\n  toggle-12: { title: The toggle in my drawer, ... }",
};

export const MEASURED_UNKNOWN: CodeEntry = {
  code: "catalogue/measured-unknown",
  severity: "fault",
  title: "A measured size that belongs to nothing in the catalogue",
  why: "A measured size goes over a figure of a part's record. Where the part or the figure is not there, the reading would be lost in silence.",
  example: "measured:\n  toggle-12: { hold.lenght: 9.2 mm, dated: 2026-10-02 }",
};

export const CATALOGUE_CODES: readonly CodeEntry[] = [
  RECORD_FAULT,
  RECORD_REPLACES,
  MEASURED_UNKNOWN,
];
