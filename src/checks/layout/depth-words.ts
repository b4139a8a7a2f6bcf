// How findings of depth speak of a thickness that has a range, and of who gave a part's figures.

import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import type { LimitSource } from "../../diagnostics/finding.ts";
import type { PanelLayout, PlacedComponent, Range } from "../../layout/panel-layout.ts";

export const worstStack = (range: Range, end: "thickest" | "thinnest"): string =>
  range.known ? "the stack as measured" : `the ${end} sheet that its range allows`;

export const recordOf = (component: PlacedComponent): LimitSource =>
  limitOfFigures(component.part.figures);

/** The component, and where thickness is to blame the unmeasured sheets from `first` on that make it up. */
export const withUnmeasured = (
  component: PlacedComponent,
  layout: PanelLayout,
  layers: { readonly first: number; readonly last: number },
): readonly string[] => [
  component.id,
  ...layout.layers
    .filter(({ index }) => index >= layers.first && index <= layers.last)
    .filter(({ kind, thickness }) => kind === "sheet" && !thickness.known)
    .map(({ id }) => id),
];
