// What the page and its worker say to each other: texts in, the reading of them out. Plain data both ways.
// Another question to the worker gets its own file of messages and a line in `core.worker.ts`.

import type { ConsoleDesign } from "../src/design/console-design.ts";
import type { PanelDesign } from "../src/design/panel-design.ts";
import type { Finding } from "../src/diagnostics/finding.ts";
import type { ConsoleLayout } from "../src/layout/console/console-layout.ts";
import type { PanelLayout } from "../src/layout/panel-layout.ts";
import type { ConsoleFrame } from "../src/parts/frame/frame-part.ts";
import type { PanelPicture } from "./panel/panel-picture.ts";

/** The texts of a design by path from its root, forward slashes. */
export type DesignTexts = ReadonlyMap<string, string>;

/** What the texts name that is no text, by path from the root: shapes of obstacles. */
export type DesignBinaries = ReadonlyMap<string, Uint8Array>;

/** What a design is read from. */
export interface DesignSources {
  readonly texts: DesignTexts;
  readonly binaries: DesignBinaries;
}

export interface CoreRequest extends DesignSources {
  readonly number: number;
}

export interface PanelReading {
  readonly name: string;
  readonly title: string;
  readonly file: string;
  readonly design: PanelDesign;
  /** null where a fault kept the panel from being laid out. Markings come without their shapes: `picture` has them. */
  readonly layout: PanelLayout | null;
  readonly picture: PanelPicture | null;
}

/** A console that the design holds, laid out. */
export interface ConsoleReading {
  readonly design: ConsoleDesign;
  readonly layout: ConsoleLayout;
  /** null where the design asks for none, or where a fault stands in its way. */
  readonly frame: ConsoleFrame | null;
}

/** A finding with its place worked out, since only the worker holds the texts that it was judged on. */
export interface PlacedFinding {
  readonly finding: Finding;
  readonly line: number;
  readonly column: number;
}

export interface DesignReading {
  readonly kind: "read";
  readonly number: number;
  readonly panels: readonly PanelReading[];
  /** null where the design holds none; the first by path where it holds several. */
  readonly console: ConsoleReading | null;
  readonly findings: readonly PlacedFinding[];
}

/** The program itself failed: its data could not be loaded, or it has a mistake in it. */
export interface CoreFailure {
  readonly kind: "failed";
  readonly number: number;
  readonly why: string;
}

export type CoreReply = DesignReading | CoreFailure;
