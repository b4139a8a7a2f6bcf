// Holes that something must enter, each with its gauge and its layer; and the hole size that would do.

import type { Remedy } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { CutOut, Gauge, LayerLayout } from "../../layout/panel-layout.ts";
import type { PanelFacts } from "../rule.ts";

export interface GaugedHole {
  readonly cutOut: CutOut;
  readonly gauge: Gauge;
  readonly layer: LayerLayout;
}

export const gaugedHoles = (facts: PanelFacts): readonly GaugedHole[] =>
  facts.layout.layers.flatMap((layer) =>
    layer.cutOuts.flatMap((cutOut) =>
      cutOut.gauge === null ? [] : [{ cutOut, gauge: cutOut.gauge, layer }],
    ),
  );

/** Clearance of a bush in its hole: common practice for metal; acrylic wants more, which the material's record adds. */
const CLEARANCE = 0.1;

/** The size to write under `hole` for the part to enter, paint allowed for; null where no size is both enough and covered. */
export const holeThatWorks = ({ cutOut, gauge, layer }: GaugedHole): string | null => {
  const paint = cutOut.asCut ? 2 * layer.holePaint.high : 0;
  const size = Math.ceil((gauge.goSize + paint + CLEARANCE) * 20) / 20;
  const largest = size - (cutOut.asCut ? 2 * layer.holePaint.low : 0);
  return gauge.noGo !== null && largest > gauge.noGo ? null : `${decimal(size, 2)} mm`;
};

/** Only a size that the design wrote itself can be written anew. */
export const holeRemedies = (hole: GaugedHole, facts: PanelFacts): readonly Remedy[] => {
  const component = facts.layout.components.find(({ id }) => id === hole.cutOut.owner);
  const span = component?.written.keys["hole"];
  const text = holeThatWorks(hole);
  if (span === undefined || text === null) return [];
  return [{ title: `hole: ${text} (${component?.entry ?? ""})`, edits: [facts.edit(span, text)] }];
};
