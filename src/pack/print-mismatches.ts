// What the inspection of print files found wrong, as faults of the panel.

import { type Finding, finding } from "../diagnostics/finding.ts";
import type { InspectionRow } from "../inspection/row.ts";
import { INSPECTION_MISMATCH } from "./codes.ts";
import type { PanelForPack } from "./panel-pack.ts";

/** The first few are enough to see what is wrong. */
const SHOWN = 3;

export const printMismatches = (
  inspection: readonly InspectionRow[],
  panel: PanelForPack,
): readonly Finding[] => {
  const failed = inspection.filter(({ passed }) => !passed);
  return failed.slice(0, SHOWN).map((row, index) =>
    finding(INSPECTION_MISMATCH, {
      panel: panel.design.name,
      subjects: [row.feature],
      message: `${row.file}: ${row.feature}, ${row.what} must be ${row.expected} and measures ${row.measured}`,
      span: panel.design.written.span,
      suppressed: index === SHOWN - 1 ? failed.length - SHOWN : 0,
    }),
  );
};
