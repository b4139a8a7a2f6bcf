// Along which axes a thing goes, the better one first: toward the middle of its panel, or away from what it is too near.

import type { Point } from "../geometry/contour.ts";
import { extentCentre } from "../geometry/extent.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { Way } from "./move-remedy.ts";

export const inwardWays = (at: Point, layout: PanelLayout): readonly Way[] => {
  const middle = extentCentre(layout.nominal);
  return [
    { axis: "across", toward: at.x < middle.x ? 1 : -1 },
    { axis: "along", toward: at.y < middle.y ? 1 : -1 },
  ];
};

/** First along the axis on which it stands farther off. */
export const awayWays = (from: Point, at: Point): readonly Way[] => {
  const across: Way = { axis: "across", toward: at.x > from.x ? 1 : -1 };
  const along: Way = { axis: "along", toward: at.y > from.y ? 1 : -1 };
  return Math.abs(at.x - from.x) >= Math.abs(at.y - from.y) ? [across, along] : [along, across];
};
