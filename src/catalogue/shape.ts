// Shapes as a datasheet gives them, centred on the part's own axis: x right, y up, seen from the front.
// Sizes are finished sizes. Clock angles are degrees clockwise from twelve.

import type { Point } from "../geometry/contour.ts";
import type { Degrees, Mm } from "../geometry/quantity.ts";

export type Shape =
  | { readonly kind: "round"; readonly diameter: Mm }
  /** D hole: `flat` is the distance from the axis to the flat. */
  | { readonly kind: "flat"; readonly diameter: Mm; readonly flat: Mm; readonly clock: Degrees }
  /** Two parallel flats, `across` apart; `clock` points at one of them. */
  | {
      readonly kind: "double-flat";
      readonly diameter: Mm;
      readonly across: Mm;
      readonly clock: Degrees;
    }
  /** A notch of `width` whose bottom lies `over` from the opposite side of the hole (24.1 over 22.3). */
  | {
      readonly kind: "notch";
      readonly diameter: Mm;
      readonly width: Mm;
      readonly over: Mm;
      readonly clock: Degrees;
    }
  | { readonly kind: "rectangle"; readonly width: Mm; readonly height: Mm; readonly corner: Mm }
  | { readonly kind: "slot"; readonly length: Mm; readonly width: Mm; readonly clock: Degrees }
  | { readonly kind: "polygon"; readonly points: readonly Point[]; readonly corner: Mm };

/** A shape away from the part's axis. */
export interface ShapeAt {
  readonly shape: Shape;
  readonly at: Point;
}
