// What a panel asks to have printed beside its layers: the trim of a display, the lamp box of an annunciator, the angled
// box under a panel that stands on the console.

import type { Degrees, Mm } from "../geometry/quantity.ts";
import type { Written } from "./written.ts";

export type TrimFixing = "snap" | "glue" | "screw";

/** A ring in the fascia round a display. */
export interface TrimDesign {
  /** How far its lip reaches in over the display's edge; null: as far as the display's window. */
  readonly lip: Mm | null;
  readonly fixing: TrimFixing;
  /** The sheet that lies behind the lip. */
  readonly filter: string | null;
  /** null: as the panel's spacer. */
  readonly print: string | null;
  readonly written: Written;
}

/** A box of cells behind the windows of an annunciator. */
export interface LampBoxDesign {
  /** In each window. */
  readonly leds: number;
  /** The bare LED that is seated, from the catalogue. */
  readonly led: string;
  /** From the sheet that it lies on to its lid; null: as deep as the panel's spacer. */
  readonly depth: Mm | null;
  /** The sheet on the shelf of each cell. */
  readonly diffuser: string;
  /** Round its front, to glue it or clamp it by. */
  readonly flange: Mm;
  /** null: as the panel's spacer. */
  readonly print: string | null;
  readonly written: Written;
}

/** A box that stands on the console and carries the panel on a sloping face. */
export interface AngledBoxDesign {
  /** Its walls' outside on the console, seen from above; the last corner joins the first. y grows away from the operator. */
  readonly footprint: readonly { readonly x: Mm; readonly y: Mm }[];
  /** Of the face; it rises away from the operator. */
  readonly slope: Degrees;
  /** Height of the walls where they are lowest. */
  readonly rise: Mm;
  /** Round its foot, outside the walls. */
  readonly flange: Mm;
  readonly print: string;
  readonly written: Written;
}
