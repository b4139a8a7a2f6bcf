// How wide the holes of a bay's rail bars may be. Takes the bay and what the plan hangs on; gives the width at which they meet
// one another or the bar's inner edge, or leave the ribs' tabs no room.

import type { FrameBay } from "./frame-bay.ts";
import { RAIL_TAB, TAB } from "./frame-practice.ts";
import type { PlanOptions } from "./plan-options.ts";
import { barReach } from "./rail-reach.ts";

export const railHoleLimit = (
  bay: FrameBay,
  options: Pick<PlanOptions, "design" | "thickness" | "across">,
): number => {
  const { halfColumns, halfClear, pitch } = bay;
  const reach = barReach(bay, options);
  const outer = Math.min(-reach.from, reach.to) - halfColumns;
  const besideTabs = 2 * (outer - 2 * RAIL_TAB.web - TAB.shortest);
  return Math.min(pitch, 2 * (halfColumns - halfClear), besideTabs);
};
