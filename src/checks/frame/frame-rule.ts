// What a rule over a console's frame is: its row in the table of codes, and a judgement over what `parts` made of the design.
// A sheet is judged as soon as it is known, a plan before a board of it is made, boards as they would be cut.

import type { Catalogue } from "../../catalogue/record.ts";
import type { WorkshopDesign } from "../../design/workshop-design.ts";
import type { CodeEntry, Finding } from "../../diagnostics/finding.ts";
import type { ConsoleFrame } from "../../parts/frame/frame-part.ts";
import type { ConsolePlan, FrameSheet } from "../../parts/frame/planned-frame.ts";
import type { MovedHatch } from "../../parts/frame/unit-boards.ts";

export interface SheetFacts {
  readonly sheet: FrameSheet;
  readonly catalogue: Catalogue;
  /** The console's own: whose house rules count. */
  readonly workshop: WorkshopDesign | null;
  /** The design's texts by path; for remedies. */
  readonly texts: ReadonlyMap<string, string>;
}

export interface PlanFacts extends Omit<SheetFacts, "sheet"> {
  readonly plan: ConsolePlan;
}

export interface BoardFacts extends PlanFacts {
  readonly frame: ConsoleFrame;
  /** The frame with cheeks that stand so far beyond; null where none can be made. */
  readonly withBeyond: (beyond: number) => ConsoleFrame | null;
  /** In words: what found no room on its board. */
  readonly leftOut: readonly string[];
  readonly movedHatches: readonly MovedHatch[];
}

export interface FrameRule<Facts> {
  readonly entry: CodeEntry;
  readonly judge: (facts: Facts) => readonly Finding[];
}
