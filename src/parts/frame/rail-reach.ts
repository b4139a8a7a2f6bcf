// How far out a bay's rail bars may run: to the cheeks, square edges beside upright faces, and free to be dropped in from above.

import type { Span } from "./board.ts";
import type { FrameBay } from "./frame-bay.ts";
import { GAP } from "./frame-practice.ts";
import type { PlanOptions } from "./plan-options.ts";

/** Outer edges in the bay's own x. */
export const barReach = (
  { centre, tilt }: FrameBay,
  { design, thickness, across }: Pick<PlanOptions, "design" | "thickness" | "across">,
): Span => {
  const heights = [-thickness, 0, design.beyond];
  const at = (side: number, z: number): number => (side - centre + z * tilt.y) / tilt.x;
  return {
    from: Math.max(...heights.map((z) => at(across.from, z))) + GAP,
    to: Math.min(...heights.map((z) => at(across.to, z))) - GAP,
  };
};
