// Where a hole's size is written: the component's `hole`, else its `measured`, else the whole of it.

import type { Span } from "../../diagnostics/finding.ts";
import type { CutOut, PanelLayout } from "../../layout/panel-layout.ts";

export const holeSpan = (cutOut: Pick<CutOut, "owner" | "span">, layout: PanelLayout): Span => {
  const component = layout.components.find(({ id }) => id === cutOut.owner);
  return component?.written.keys["hole"] ?? component?.written.keys["measured"] ?? cutOut.span;
};
