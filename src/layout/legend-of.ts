// The legend that a marking was set from: its own height, gap and alert stand there. null for scales, lines and the words
// at a lever's positions, which follow the panel's lettering.

import { entryName } from "../design/entry-name.ts";
import type { LegendDesign } from "../design/panel-design.ts";
import { memberIds } from "./member-ids.ts";
import type { PanelLayout, PlacedMarking } from "./panel-layout.ts";

export const legendOf = (marking: PlacedMarking, layout: PanelLayout): LegendDesign | null => {
  if (marking.kind === "legend" && marking.id === `${marking.owner}/legend`)
    return layout.components.find(({ id }) => id === marking.owner)?.legend ?? null;
  const entry = entryName(marking.id);
  const design = layout.design.markings.find(({ id }) => id === entry);
  if (design?.kind === "legend") {
    const index = memberIds(design.id, design.pattern).indexOf(marking.id);
    return design.legends[index] ?? null;
  }
  return design !== undefined && "legend" in design ? design.legend : null;
};
