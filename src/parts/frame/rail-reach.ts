// How far out a bay's rail bars must run: under the panels' edges, and past their holes with room for the ribs' tabs. And how far
// they may: to the cheeks, square edges beside upright faces, and free to be dropped in from above.

import type { Span } from "./board.ts";
import type { FrameBay } from "./frame-bay.ts";
import { GAP, RAIL_TAB, TAB } from "./frame-practice.ts";
import type { PlanOptions } from "./plan-options.ts";
import { railHoleSize } from "./rail-holes.ts";
import type { SizedFrame } from "./sized-frame.ts";

/** From the bay's middle to the outer edge of its rails, at least. */
export const leastReach = (
  { halfWidth, halfClear, railHoles }: FrameBay,
  design: SizedFrame,
): number => {
  const { reach } = railHoles;
  const wood = halfClear + design.rails.width;
  const panel = halfWidth + GAP;
  if (reach === null) return Math.max(wood, panel);
  const beside = railHoleSize(design, railHoles) / 2 + 2 * RAIL_TAB.web + TAB.shortest;
  return Math.max(wood, panel, reach.outer + beside);
};

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
