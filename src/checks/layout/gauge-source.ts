// Whose figure it is that must pass a hole: of the part that enters it, of the mount, or of the dowel as drawn.

import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import type { LimitSource } from "../../diagnostics/finding.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import type { GaugedHole } from "./gauged-holes.ts";

export const gaugeSource = ({ cutOut, gauge }: GaugedHole, layout: PanelLayout): LimitSource => {
  if (cutOut.purpose === "mount") return limitOfFigures(layout.mount.figures);
  const component = layout.components.find(({ id }) => id === cutOut.owner);
  return component === undefined
    ? { kind: "geometry", name: gauge.what }
    : limitOfFigures(component.part.figures);
};
