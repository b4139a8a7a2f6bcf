// The table of what can't be printed as the panel asks for. Each is a finding in place of a weaker part.

import type { CodeEntry } from "../../diagnostics/finding.ts";

export const NO_OPAQUE_WALL: CodeEntry = {
  code: "parts/no-opaque-wall",
  severity: "fault",
  title: "no room for a wall that keeps light in",
  why: "A printed wall keeps light in from a certain thickness, and only in whole lines of the nozzle: three lines of 0.45 mm are 1.35 mm, and 1.0 mm leaves a pinholed gap. Where a hole or the rail leaves less, the wall is not made thinner: the component moves, or the stock is a blacker one.",
  example:
    "stack:\n  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-12v, circuit: night } }",
};

export const PRINTED_CODES: readonly CodeEntry[] = [NO_OPAQUE_WALL];
