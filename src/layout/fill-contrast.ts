// How far engraving that is filled with paint stands out from the sheet that it is engraved in. A fact; what is enough is said
// elsewhere.

import type { FinishDesign, StockDesign } from "../design/workshop-design.ts";
import { type NamedColour, namedColour } from "../standards/colour-words.ts";
import { contrastRatio } from "../standards/contrast.ts";

export interface FillContrast {
  readonly fill: NamedColour;
  readonly sheet: NamedColour;
  readonly ratio: number;
}

/** null where engraving is not filled, or where one of the two colours is none that is known by its name. */
export const fillContrast = (
  finish: FinishDesign | null,
  stock: StockDesign | null,
): FillContrast | null => {
  if (finish?.order !== "engrave-fill") return null;
  const fill = namedColour(finish.coats.at(-1) ?? "");
  const sheet = namedColour(stock?.colour ?? "");
  return fill === null || sheet === null
    ? null
    : { fill, sheet, ratio: contrastRatio(fill.looks, sheet.looks) };
};
