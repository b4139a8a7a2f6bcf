// How a panel is held: sizes, holes, and what the mount covers at its rear.

import type { Mm } from "../geometry/quantity.ts";
import type { Figures } from "./part.ts";
import type { Shape } from "./shape.ts";

export interface Mount {
  readonly kind: "mount";
  readonly id: string;
  readonly title: string;
  /** Nominal width; null where the design gives it. */
  readonly width: Mm | null;
  /** How a height is counted. `size = pitch * n - less`. */
  readonly height: {
    readonly unit: "modules" | "U" | "HP" | "mm";
    readonly pitch: Mm;
    readonly less: Mm;
  };
  /** Subracks count widths and fix the height. */
  readonly counts: "height" | "width";
  readonly fixedHeight: Mm | null;
  /** The panel is cut smaller than nominal by this much on each side. */
  readonly undersize: Mm;
  /** Corner radius of the outline. */
  readonly corner: Mm;
  readonly holes: MountHoles;
  /** What the holes take: a stud, or a screw. */
  readonly fastener: string;
  /** Strip of the rear along each side that the rail covers; 0 where there is none. */
  readonly seat: Mm;
  /** Clear width between the rails, or of the opening. */
  readonly clearWidth: Mm | null;
  /** Edge-to-edge web between the mount hole in metal and the nominal outline: the mount's own, not the general rule's. */
  readonly web: Mm;
  /** Hole in the layers in front of the one that the fastener clamps, so that acrylic is not clamped. */
  readonly headClearance: Mm;
  readonly figures: Figures;
}

export type MountHoles =
  | {
      /** Two columns `apart`; the first row `first` from each end, then wherever the pitch allows. */
      readonly kind: "columns";
      readonly apart: Mm;
      readonly first: Mm;
      readonly pitch: Mm;
      readonly hole: Shape;
      /** The hole in painted acrylic, and the column that is slotted to let it move. */
      readonly inAcrylic: Shape;
      readonly slottedColumn: "left" | "right" | "none";
      /** Most that two rows may lie apart. */
      readonly span: Mm;
    }
  | {
      /** 19-inch: the steps of a unit repeat. */
      readonly kind: "units";
      readonly apart: Mm;
      readonly hole: Shape;
      /** Centres from the panel's lower edge for one unit, by how many units the panel has. */
      readonly inset: Mm;
    }
  | {
      readonly kind: "subrack";
      readonly rowsApart: Mm;
      readonly firstFromLeft: Mm;
      readonly pitch: Mm;
      readonly hole: Shape;
    }
  | { readonly kind: "corners"; readonly inset: Mm; readonly hole: Shape };
