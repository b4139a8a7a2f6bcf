// The least wood between a slot of a frame and another cut, unless the workshop says otherwise; and what is said of less.

import type { Web } from "../../parts/frame/webs.ts";
import type { HouseRule } from "../house-rule.ts";
import { millimetres } from "../words.ts";

export const frameWeb = (thickness: number): HouseRule => ({
  key: "frame-web",
  usual: thickness,
  name: "a web as wide as the sheet is thick (common practice)",
});

/** `cheek-left: 9.4 mm stand between slot.floor.1 and its edge; 11.6 mm is wanted, 2.2 mm more.` */
export const webWords = (part: string, { opening, between, gap }: Web, limit: number): string => {
  const stands =
    gap < 0
      ? `${opening} runs out over the edge by ${millimetres(-gap, 0)}; ${millimetres(limit, gap)} is to stand between the two`
      : `${millimetres(gap, limit)} stand between ${between}; ${millimetres(limit, gap)} is wanted`;
  return `${part}: ${stands}, ${millimetres(limit - gap, 0)} more.`;
};
