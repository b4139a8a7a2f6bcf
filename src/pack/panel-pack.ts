// What goes into the making of a panel's pack, and what comes out of it.

import type { Catalogue } from "../catalogue/record.ts";
import type { PanelDesign } from "../design/panel-design.ts";
import type { Finding } from "../diagnostics/finding.ts";
import type { PaperName } from "../export/paper.ts";
import type { ProcessColours } from "../export/process-colours.ts";
import type { Mm } from "../geometry/quantity.ts";
import type { Kernel } from "../geometry/solid/kernel.ts";
import type { InspectionRow } from "../inspection/row.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { Lettering } from "../lettering/lettering.ts";
import type { FittedThings } from "../parts/printed/fitted-things.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";
import type { SheetPart } from "../parts/sheet-part.ts";
import type { PackFile } from "./pack-file.ts";

export interface PanelForPack {
  readonly design: PanelDesign;
  readonly layout: PanelLayout;
  readonly sheetParts: readonly SheetPart[];
  readonly printedParts: readonly PrintedPart[];
  /** What lies in the printed parts: sheets to cut, films. */
  readonly fitted: FittedThings;
  /** How thick the wooden rails are that it lies on, of its console's own frame; null where it lies on none. */
  readonly rail: Mm | null;
  readonly findings: readonly Finding[];
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
  readonly colours: ProcessColours;
  readonly paper: PaperName;
  /** The design's texts by path: findings in the pack say their lines. */
  readonly texts: ReadonlyMap<string, string>;
}

export interface PackOptions {
  /** `fascia`: the cut files, their key and inspection; no drawings and no papers. */
  readonly only: "everything" | "fascia";
  /** Adds a set of cut files for a test in cardboard. */
  readonly card: boolean;
  /** Opens solids for print files; null where nobody has one: then the pack says that it holds none. */
  readonly kernel?: Kernel | null;
}

export interface PanelPack {
  /** In the order of the manifest, which is the last of them. */
  readonly files: readonly PackFile[];
  readonly inspection: readonly InspectionRow[];
  /** Faults: the pack must not be written. */
  readonly findings: readonly Finding[];
}
