// The least wall that is printed as a wall, and whose limit it is: the lines are the printer's, that there be two of them is
// common practice.

import type { PrinterDesign } from "../../design/workshop-design.ts";
import type { LimitSource } from "../../diagnostics/finding.ts";
import { LEAST_LINES, USUAL_LINE } from "../../parts/printed/opaque-wall.ts";

export const twoLines = (printer: PrinterDesign | null): number =>
  LEAST_LINES * (printer?.line ?? USUAL_LINE);

export const twoLinesSource = (printer: PrinterDesign | null): LimitSource =>
  printer === null
    ? { kind: "practice", name: `${LEAST_LINES} lines of a 0.4 mm nozzle` }
    : { kind: "practice", name: `${LEAST_LINES} lines of ${printer.id}` };
