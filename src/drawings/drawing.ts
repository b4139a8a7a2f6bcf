// A drawing: outlines, fills and lettering in millimetres, y up, in the order of painting.
// All text is already outlines; a drawing holds nothing that a reader could take for markup.

import type { Contour, Path, Region } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import type { Mm } from "../geometry/quantity.ts";

export interface Drawing {
  readonly title: string;
  readonly box: Extent;
  readonly items: readonly DrawingItem[];
}

/** Colours are named by what they stand for; a table in the exporter gives each its ink. */
export type Ink = PaperInk | PictureInk;

type PaperInk =
  | "paper"
  | "line"
  | "faint"
  | "dimension"
  | "opaque"
  | "translucent"
  | "clear"
  | "metal"
  | "printed"
  | "legend"
  | "component"
  | "knob"
  | "lamp"
  | "glass"
  | "alert"
  | "caution"
  | "advisory"
  | "hold"
  | "rail"
  | "engrave"
  | "score"
  | "cut-inner"
  | "cut-outer"
  | "witness"
  | "drill";

/** What a panel looks like on the bench, for pictures. */
type PictureInk =
  | "backdrop"
  | "shadow"
  | "shade-light"
  | "face-black"
  | "face-grey"
  | "face-white"
  | "face-aluminium"
  | "face-opal"
  | "face-green"
  | "face-blue"
  | "face-edge"
  | "legend-lit"
  | "legend-filled"
  | "well"
  | "knob-rim"
  | "knob-top"
  | "knob-shine"
  | "pointer"
  | "metal-dark"
  | "metal-light"
  | "lens-red"
  | "lens-amber"
  | "lens-green"
  | "lens-white"
  | "shine"
  | "glass-dark"
  | "segment-lit"
  | "segment-off"
  | "dial-face"
  | "guard"
  | "guard-rib"
  | "key-top";

export type DrawingItem =
  | { readonly kind: "fill"; readonly regions: readonly Region[]; readonly ink: Ink }
  | {
      readonly kind: "outline";
      readonly contours: readonly Contour[];
      readonly ink: Ink;
      readonly width: Mm;
      readonly dashed: boolean;
    }
  | {
      readonly kind: "stroke";
      readonly paths: readonly Path[];
      readonly ink: Ink;
      readonly width: Mm;
      readonly dashed: boolean;
    };
