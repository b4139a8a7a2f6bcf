// What the inspection of print files, or of a console's model, found wrong, as faults of the panel or the console.

import type { Written } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import type { InspectionRow } from "../inspection/row.ts";
import { INSPECTION_MISMATCH } from "./codes.ts";

/** The first few are enough to see what is wrong. */
const SHOWN = 3;

export const printMismatches = (
  inspection: readonly InspectionRow[],
  { design }: { readonly design: { readonly name: string; readonly written: Written } },
): readonly Finding[] => {
  const failed = inspection.filter(({ passed }) => !passed);
  return failed.slice(0, SHOWN).map((row, index) =>
    finding(INSPECTION_MISMATCH, {
      panel: design.name,
      subjects: [row.feature],
      message: `${row.file}: ${row.feature}, ${row.what} must be ${row.expected} and measures ${row.measured}`,
      span: design.written.span,
      suppressed: index === SHOWN - 1 ? failed.length - SHOWN : 0,
    }),
  );
};
