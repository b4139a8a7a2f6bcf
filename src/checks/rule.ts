// What a rule is: its row in the table of codes, and a judgement over facts that lower floors made.

import type { Catalogue } from "../catalogue/record.ts";
import type { WorkshopDesign } from "../design/workshop-design.ts";
import type { CodeEntry, Finding, Span } from "../diagnostics/finding.ts";
import type { TextEdit } from "../diagnostics/text-edit.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";
import type { SheetPart } from "../parts/sheet-part.ts";

/** Everything that a panel's rules may look at. */
export interface PanelFacts {
  readonly layout: PanelLayout;
  readonly sheetParts: readonly SheetPart[];
  readonly printedParts: readonly PrintedPart[];
  readonly workshop: WorkshopDesign | null;
  readonly catalogue: Catalogue;
  /** An edit that replaces the text at a span; for remedies. */
  readonly edit: (span: Span, text: string) => TextEdit;
  /** The design's texts by path, where the caller has them: units as written, and keys that a remedy adds. */
  readonly texts?: ReadonlyMap<string, string>;
}

/** How a move mends what a rule finds. `away`: the first subject from the second. `inward`: the subject from an edge. */
export type Move = "away" | "inward";

export interface Rule {
  readonly entry: CodeEntry;
  /** How moving a component mends what it finds; null where no move does. */
  readonly move: Move | null;
  readonly judge: (facts: PanelFacts) => readonly Finding[];
}
