// Pilot holes for heat-set inserts in printed parts, and the plastic they need around them.

import { type Mm, mm } from "../geometry/quantity.ts";

/** Diameter of the hole as printed, -0 / +0.1, by thread: makers' datasheets agree; seen. */
export const HEAT_SET_PILOTS: Readonly<Record<"m3" | "m4" | "m5" | "m6", Mm>> = {
  m3: mm(4.0),
  m4: mm(5.6),
  m5: mm(6.4),
  m6: mm(8.0),
};

/** Common practice: a boss about twice the insert's outside, room below it for melt, solid under that. */
export const HEAT_SET_BOSS = {
  outsideOverInsert: 2,
  holeBeyondInsert: { least: mm(0.5), most: mm(1) },
  solidBelow: mm(2),
  source: "common practice",
} as const;
