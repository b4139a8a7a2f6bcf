// What lies in a panel's printed parts and comes from another machine: filters and diffusers to cut, label films for an
// office printer. From the same components as the parts themselves.

import type { PanelLayout } from "../../layout/panel-layout.ts";
import type { SheetPart } from "../sheet-part.ts";
import type { LabelFilm } from "./lamp-box-film.ts";
import { lampBoxesWithSheets } from "./lamp-boxes.ts";
import type { PrintedContext } from "./printed-context.ts";
import { trimsWithFilters } from "./trims.ts";

export interface FittedThings {
  readonly sheets: readonly SheetPart[];
  readonly films: readonly LabelFilm[];
}

export const fittedThingsOf = (layout: PanelLayout, context: PrintedContext): FittedThings => {
  const trims = trimsWithFilters(layout, context);
  const boxes = lampBoxesWithSheets(layout, context);
  return { sheets: [...trims.sheets, ...boxes.sheets], films: boxes.films };
};
