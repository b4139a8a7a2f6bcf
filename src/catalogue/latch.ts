// The room that a thumb needs to press a plug's latch: a block on one side of the plug, from its mouth outward.

import type { Degrees, Mm } from "../geometry/quantity.ts";

export interface LatchRoom {
  /** Across the plug's side. */
  readonly width: Mm;
  /** From the plug's side outward: what the thumb reaches in by. */
  readonly out: Mm;
  /** Along the plug, from its mouth. */
  readonly length: Mm;
}

/** Of a part's plug behind the panel: the side that the latch is on, as a clock angle seen from the front. */
export interface PartLatch extends LatchRoom {
  readonly clock: Degrees;
}

/** Of a plug on a board: away from the board's front, or from its back. */
export interface BoardLatch extends LatchRoom {
  readonly side: "front" | "back";
}
