// Screws and dowels that the design does not place itself.

import type { PanelLayout, PlacedFixing } from "./panel-layout.ts";

export const setByRule = ({
  design: { fixings },
  fixings: placed,
}: PanelLayout): readonly PlacedFixing[] =>
  placed.filter(({ kind }) =>
    kind === "screw" ? (fixings?.at ?? null) === null : (fixings?.dowelsAt ?? null) === null,
  );
