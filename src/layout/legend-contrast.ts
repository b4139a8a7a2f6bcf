// How far legends that are engraved stand out from the face that they are engraved in: filled with paint, or cut through the paint of
// an opaque sheet. A fact; what is enough is said elsewhere.

import type { FinishDesign, StockDesign } from "../design/workshop-design.ts";
import { type NamedColour, namedColour } from "../standards/colour-words.ts";
import { contrastRatio } from "../standards/contrast.ts";

export interface LegendContrast {
  /** `filled`: paint in the bare sheet. `through`: what lies under the last coat, seen in it. */
  readonly kind: "filled" | "through";
  readonly letters: NamedColour;
  readonly ground: NamedColour;
  readonly ratio: number;
}

/** null where nothing is painted, or where one of the two colours is none that is known by its name. */
export const legendContrast = (
  finish: FinishDesign | null,
  stock: StockDesign | null,
): LegendContrast | null => {
  if (finish === null || stock === null) return null;
  const sheet = namedColour(stock.colour);
  const last = namedColour(finish.coats.at(-1) ?? "");
  if (sheet === null || last === null) return null;
  if (finish.order === "engrave-fill") return contrastOf("filled", last, sheet);
  return stock.light === "opaque" ? throughPaint(finish, sheet, last) : null;
};

/** Cut as deep as is read best: to the sheet, or to a coat below the last. */
const throughPaint = (
  { coats }: FinishDesign,
  sheet: NamedColour,
  ground: NamedColour,
): LegendContrast | null => {
  const below = coats.slice(0, -1).map(namedColour);
  if (below.includes(null)) return null;
  return [sheet, ...below.flatMap((coat) => coat ?? [])]
    .map((letters) => contrastOf("through", letters, ground))
    .reduce((best, one) => (one.ratio > best.ratio ? one : best));
};

const contrastOf = (
  kind: LegendContrast["kind"],
  letters: NamedColour,
  ground: NamedColour,
): LegendContrast => ({ kind, letters, ground, ratio: contrastRatio(letters.looks, ground.looks) });
