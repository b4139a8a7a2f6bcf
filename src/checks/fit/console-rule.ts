// What a rule over a console is: its row in the table of codes, and a judgement over facts that lower floors made.

import type { Catalogue } from "../../catalogue/record.ts";
import type { WorkshopDesign } from "../../design/workshop-design.ts";
import type { CodeEntry, Finding, Span } from "../../diagnostics/finding.ts";
import type { TextEdit } from "../../diagnostics/text-edit.ts";
import type { FitFacts } from "../../fit/fit-facts.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import type { ConsoleFrame } from "../../parts/frame/frame-part.ts";

/** What is known of a console as soon as it is laid out. */
export interface BayFacts {
  readonly layout: ConsoleLayout;
  /** An edit that replaces the text at a span; for remedies. */
  readonly edit: (span: Span, text: string) => TextEdit;
  /** The design's texts by path: units as written, and keys that a remedy adds. */
  readonly texts: ReadonlyMap<string, string>;
}

/** Everything that a console's rules may look at. */
export interface ConsoleFacts extends BayFacts {
  readonly frame: ConsoleFrame | null;
  readonly catalogue: Catalogue;
  /** The console's own: whose house rules count. */
  readonly workshop: WorkshopDesign | null;
  readonly fit: FitFacts;
}

/** Judges places alone: asked whenever the design is compiled. */
export interface BayRule {
  readonly entry: CodeEntry;
  readonly judge: (facts: BayFacts) => readonly Finding[];
}

/** Judges bodies in space: asked when the console is fitted. */
export interface ConsoleRule {
  readonly entry: CodeEntry;
  readonly judge: (facts: ConsoleFacts) => readonly Finding[];
}
