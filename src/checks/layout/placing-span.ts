// Where a thing's place is written: a component's own placing keys, else whatever the thing is written in.

import type { Span } from "../../diagnostics/finding.ts";
import type { CutOut, PanelLayout } from "../../layout/panel-layout.ts";

export const placingSpan = (layout: PanelLayout, thing: Pick<CutOut, "owner" | "span">): Span =>
  layout.components.find(({ id }) => id === thing.owner)?.placeSpan ?? thing.span;
