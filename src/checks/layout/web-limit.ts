// The least web between two openings, unless the workshop says otherwise.

import { LEAST_WEB } from "../../design/usual-values.ts";
import type { HouseRule } from "../house-rule.ts";

export const WEB: HouseRule = {
  key: "web",
  usual: LEAST_WEB,
  name: "webs of at least 1.5 mm (common practice: 1 mm is fragile, the sheet's thickness recommended)",
};
