// The openings that rules of the panel's outline look at, with the outline of their own layer. Mount holes are judged by
// the mount's own record.

import type { Contour } from "../../geometry/contour.ts";
import type { CutOut, PanelLayout } from "../../layout/panel-layout.ts";

export interface PanelOpening {
  readonly cutOut: CutOut;
  readonly outline: Contour;
}

export const panelOpenings = (layout: PanelLayout): readonly PanelOpening[] =>
  layout.layers.flatMap(({ outline, cutOuts }) =>
    cutOuts.filter(({ purpose }) => purpose !== "mount").map((cutOut) => ({ cutOut, outline })),
  );
