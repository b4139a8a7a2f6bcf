// Words at a place of the console, as they are to stand over its picture.

import type { Vector } from "../../src/geometry/space/vector.ts";
import type { WantedSpot } from "./name-spots.ts";

export interface Label {
  readonly key: string;
  readonly at: Vector;
  readonly words: string;
  readonly look: string;
  readonly stands: WantedSpot["stands"];
  /** Which stays where two would lie over each other: the higher. */
  readonly rank: number;
  /** Corners of the panels that it names; none of what is no name of one. */
  readonly over: readonly Vector[];
}
