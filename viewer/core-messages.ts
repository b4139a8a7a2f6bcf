// What the page and its worker say to each other: texts in, the reading of them out. Plain data both ways.

import type { Finding } from "../src/diagnostics/finding.ts";
import type { PanelLayout } from "../src/layout/panel-layout.ts";

/** The texts of a design by path from its root, forward slashes. */
export type DesignTexts = ReadonlyMap<string, string>;

export interface CoreRequest {
  readonly number: number;
  readonly texts: DesignTexts;
}

export interface PanelReading {
  readonly name: string;
  readonly title: string;
  readonly file: string;
  /** null where a fault kept the panel from being laid out. */
  readonly layout: PanelLayout | null;
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
  readonly findings: readonly PlacedFinding[];
}

/** The program itself failed: its data could not be loaded, or it has a mistake in it. */
export interface CoreFailure {
  readonly kind: "failed";
  readonly number: number;
  readonly why: string;
}

export type CoreReply = DesignReading | CoreFailure;
