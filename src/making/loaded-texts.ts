// What was read for a design: the texts, and what was found wrong while they were fetched.

import type { Finding } from "../diagnostics/finding.ts";

export interface LoadedTexts {
  readonly entry: string;
  /** Text by path from the root. */
  readonly files: ReadonlyMap<string, string>;
  readonly findings: readonly Finding[];
}
