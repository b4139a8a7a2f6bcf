// Figures of service that no standard gives. Each is a default that a caller may put its own in place of.

import { type Mm, mm } from "../../geometry/quantity.ts";

export interface ServiceFigures {
  /**
   * Room for a straight driver before a fastener: its blade, and its length without the hand. Less than twice the 4.76 mm
   * from a rail's stud to the panel's end, so that a neighbour's thicker stack is not in its way.
   */
  readonly driver: { readonly diameter: Mm; readonly length: Mm };
  /** How far a panel is lifted once its rear end is where its front end was: room for the hands that carry it away. */
  readonly liftRoom: Mm;
  /** Loom beyond the straight way: to take hold of the plug, and for the bends at both ends. */
  readonly loopSlack: Mm;
  readonly source: string;
}

export const SERVICE_FIGURES: ServiceFigures = {
  driver: { diameter: mm(8), length: mm(150) },
  liftRoom: mm(100),
  loopSlack: mm(100),
  source: "common practice",
};
