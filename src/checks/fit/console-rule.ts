// What a rule over a console is: its row in the table of codes, and a judgement over facts that lower floors made.

import type { CodeEntry, Finding, Span } from "../../diagnostics/finding.ts";
import type { TextEdit } from "../../diagnostics/text-edit.ts";
import type { FitFacts } from "../../fit/fit-facts.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import type { ConsoleFrame } from "../../parts/frame/frame-part.ts";

/** Everything that a console's rules may look at. */
export interface ConsoleFacts {
  readonly layout: ConsoleLayout;
  readonly frame: ConsoleFrame | null;
  readonly fit: FitFacts;
  /** An edit that replaces the text at a span; for remedies. */
  readonly edit: (span: Span, text: string) => TextEdit;
  /** The design's texts by path: units as written, and keys that a remedy adds. */
  readonly texts: ReadonlyMap<string, string>;
}

export interface ConsoleRule {
  readonly entry: CodeEntry;
  readonly judge: (facts: ConsoleFacts) => readonly Finding[];
}
