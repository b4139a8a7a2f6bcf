// A console file: which panels stand in it, and where. Bays, frame and obstacles are read and kept as far as
// the program uses them.

import type { Mm } from "../geometry/quantity.ts";
import type { Written } from "./written.ts";

export interface ConsoleDesign {
  readonly kind: "console";
  readonly written: Written;
  readonly file: string;
  readonly name: string;
  readonly title: string;
  readonly workshop: string | null;
  readonly catalogue: readonly string[];
  readonly bays: Readonly<Record<string, BayDesign>>;
  readonly panels: readonly PanelUse[];
}

export interface BayDesign {
  readonly id: string;
  readonly mount: string;
  readonly modules: number;
  readonly depth: Mm;
  readonly written: Written;
}

export interface PanelUse {
  readonly file: string;
  readonly as: string;
  readonly bay: string | null;
  readonly module: number | null;
  readonly after: string | null;
  readonly written: Written;
}
