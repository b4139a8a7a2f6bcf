// The table of what goes wrong between the parts of a panel and the files of its pack.

import type { CodeEntry } from "../diagnostics/finding.ts";

export const INSPECTION_MISMATCH: CodeEntry = {
  code: "pack/inspection-mismatch",
  severity: "fault",
  title: "a file to cut or print from that does not measure what it must",
  why: "Every file to cut or print from is read back by code that shares nothing with its writer: each hole, outline, area and count of a cut is measured, and volume, box and surface of each printed body, in STL, 3MF and STEP. A difference means that the file would make a wrong part, whatever the reason. The pack is not written. This is a defect of the program: please keep the design that shows it.",
  example: "# no text of a design is known to give it",
};

export const REFUSED_SET_UP: CodeEntry = {
  code: "pack/refused-set-up",
  severity: "fault",
  title: "a set-up that can't be put into a file",
  why: "A line in the middle of the cut could not be laid beside the part's edge (the kerf is wider than a slot), an engraved shape is narrower than the spot, two cuts share one line, or something lies off the sheet. A file without it would look finished and be wrong.",
  example: "machines:\n  laser: { type: co2-laser, bed: [600, 400], spot: 2 mm }",
};

export const REFUSED_COLOUR: CodeEntry = {
  code: "pack/refused-colour",
  severity: "fault",
  title: "a process colour that can't be used",
  why: "Laser software sorts its work by colour. A colour that two processes share would run both at one setting, and a colour that is not #rrggbb can't be written.",
  example: 'process-colours: { engrave: "#ff0000", cut-inner: "#ff0000" }',
};

export const PACK_CODES: readonly CodeEntry[] = [
  INSPECTION_MISMATCH,
  REFUSED_SET_UP,
  REFUSED_COLOUR,
];
