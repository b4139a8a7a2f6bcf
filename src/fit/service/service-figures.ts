// Figures of service that no standard gives. Whoever asks for the facts says which count.

import type { Mm } from "../../geometry/quantity.ts";

export interface ServiceFigures {
  /** Room for a straight driver before a fastener: its blade, and its length without the hand. */
  readonly driver: { readonly diameter: Mm; readonly length: Mm };
  /** How far a panel is lifted once its rear end is where its front end was: room for the hands that carry it away. */
  readonly liftRoom: Mm;
  /** Loom beyond the straight way: to take hold of the plug, and for the bends at both ends. */
  readonly loopSlack: Mm;
}
