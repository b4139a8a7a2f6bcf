// Why a frame can't carry its bays, as facts: which bay, and the numbers of it. What is said of them is worded where it is judged.

import type { BayLayout } from "../../layout/console/console-layout.ts";

export type CarryingFault =
  | { readonly kind: "no-bay" }
  | { readonly kind: "bay"; readonly bay: BayLayout; readonly fault: BayFault }
  | { readonly kind: "crossing"; readonly bay: BayLayout; readonly other: BayLayout };

export type BayFault =
  /** Degrees out of the plane of its unit. */
  | { readonly kind: "off-plane"; readonly angle: number }
  | { readonly kind: "looks-down" }
  /** Its mount leaves the width open, nobody measured it, and no panel stands on it. */
  | { readonly kind: "no-width" }
  /** Its rails are to be so far apart, and can't be less. */
  | { readonly kind: "clear-too-narrow"; readonly clear: number; readonly least: number }
  /** From its middle to the innermost screw of a panel, and what a rail there takes with room before it. */
  | { readonly kind: "screws-meet"; readonly from: number; readonly least: number }
  /** Its ribs above the floor; `depth` lifts them so far, 0 where none does. */
  | {
      readonly kind: "too-low";
      readonly reaches: number;
      readonly least: number;
      readonly depth: number;
    }
  | { readonly kind: "too-short"; readonly least: number };
