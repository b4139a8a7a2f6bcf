// The row, column, grid or ring that an entry of the design is: a component or a marking by its name, screws by the name of their
// item of the list.

import type { PatternDesign } from "../design/panel-design.ts";
import type { PanelLayout } from "./panel-layout.ts";

/** null for one by itself. */
export const entryPattern = (
  entry: string,
  { design, ownPlaces }: Pick<PanelLayout, "design" | "ownPlaces">,
): PatternDesign | null => {
  const component = design.components.find(({ id }) => id === entry);
  if (component !== undefined) return component.kind === "pattern" ? component.pattern : null;
  const marking = design.markings.find(({ id }) => id === entry);
  if (marking !== undefined) return "pattern" in marking ? marking.pattern : null;
  const start = ownPlaces.find((own) => own.entry === entry)?.place.written.span.start;
  const item = design.fixings?.at?.find(({ place }) => place.written.span.start === start);
  return item?.pattern ?? null;
};
