// A board of a frame as a picture shows it: in its place or moved out of it, there already or going in now.

import type { Vector } from "../geometry/space/vector.ts";
import type { FramePart } from "../parts/frame/frame-part.ts";

export interface ShownBoard {
  readonly part: FramePart;
  /** Moved out of its place by this. */
  readonly shift: Vector;
  readonly look: "there" | "new";
}
