// The least wood between a slot of a frame and another cut, unless the workshop says otherwise.

import type { HouseRule } from "../house-rule.ts";

export const frameWeb = (thickness: number): HouseRule => ({
  key: "frame-web",
  usual: thickness,
  name: "a web as wide as the sheet is thick (common practice)",
});
