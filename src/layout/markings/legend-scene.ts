// What every marking is drawn in: the panel's lettering and the layer that carries it; for free markings also what is placed.

import type { Finding } from "../../diagnostics/finding.ts";
import type { Extent } from "../../geometry/extent.ts";
import type { LayoutContext } from "../context.ts";
import type { PlacedMarking } from "../panel-layout.ts";
import type { PlaceFinder } from "../place-finder.ts";
import type { TextStyle } from "./style.ts";

export interface LegendScene {
  readonly style: TextStyle;
  readonly layer: string;
  readonly context: LayoutContext;
}

export interface FreeScene extends LegendScene {
  readonly finder: PlaceFinder;
  /** Reach of each component or pattern with its legends, by id. */
  readonly reaches: ReadonlyMap<string, Extent>;
}

export interface PlacedFree {
  readonly markings: readonly PlacedMarking[];
  readonly findings: readonly Finding[];
}
