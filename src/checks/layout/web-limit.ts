// The least web between two openings, unless the workshop says otherwise.

import type { HouseRule } from "../house-rule.ts";

export const WEB: HouseRule = {
  key: "web",
  usual: 1.5,
  name: "webs of at least 1.5 mm (common practice: 1 mm is fragile, the sheet's thickness recommended)",
};
