// What goes into the making of a console's pack.

import type { Catalogue } from "../catalogue/record.ts";
import type { WorkshopDesign } from "../design/workshop-design.ts";
import type { Finding } from "../diagnostics/finding.ts";
import type { PaperName } from "../export/paper.ts";
import type { ProcessColours } from "../export/process-colours.ts";
import type { FitFacts } from "../fit/fit-facts.ts";
import type { ConsoleLayout } from "../layout/console/console-layout.ts";
import type { Lettering } from "../lettering/lettering.ts";
import type { ConsoleFrame } from "../parts/frame/frame-part.ts";

export interface ConsoleForPack {
  readonly layout: ConsoleLayout;
  readonly fit: FitFacts;
  /** null where the design has none, or a fault stands in its way. */
  readonly frame: ConsoleFrame | null;
  /** Of the console, its bays and frame; those of single panels stand in their own packs. */
  readonly findings: readonly Finding[];
  /** The console's own: whose house rules its fit was judged by. */
  readonly workshop: WorkshopDesign | null;
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
  readonly colours: ProcessColours;
  readonly paper: PaperName;
  readonly texts: ReadonlyMap<string, string>;
}
