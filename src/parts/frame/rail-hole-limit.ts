// How wide the holes of a bay's rail bars may be. Takes the bay and what the plan hangs on; gives the width at which they meet
// one another or the bar's inner edge, or leave the ribs' tabs no room; null where it has no holes.

import type { FrameBay } from "./frame-bay.ts";
import { RAIL_TAB, TAB } from "./frame-practice.ts";
import type { PlanOptions } from "./plan-options.ts";
import { barReach } from "./rail-reach.ts";

export const railHoleLimit = (
  bay: FrameBay,
  options: Pick<PlanOptions, "design" | "thickness" | "across">,
): number | null => {
  const { halfClear, railHoles } = bay;
  if (railHoles.reach === null) return null;
  const { inner, outer } = railHoles.reach;
  const bar = barReach(bay, options);
  const beyond = Math.min(-bar.from, bar.to) - outer;
  const besideTabs = 2 * (beyond - 2 * RAIL_TAB.web - TAB.shortest);
  const besideOthers = railHoles.apart ?? Number.POSITIVE_INFINITY;
  return Math.min(besideOthers, 2 * (inner - halfClear), besideTabs);
};
