// Findings of all panels together: a file that stands more than once is judged with each of them, and told of once, as the
// command line does.

import { distinctFindings } from "../../src/diagnostics/distinct-findings.ts";
import type { PlacedFinding } from "../core-messages.ts";

export function toldOnce(findings: readonly PlacedFinding[]): readonly PlacedFinding[] {
  const kept = new Set(distinctFindings(findings.map(({ finding }) => finding)));
  return findings.filter(({ finding }) => kept.has(finding));
}
