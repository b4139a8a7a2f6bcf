// The least rim between an opening and the panel's edge, unless the workshop says otherwise.

import { LEAST_RIM } from "../../design/usual-values.ts";
import type { HouseRule } from "../house-rule.ts";

export const EDGE: HouseRule = {
  key: "edge",
  usual: LEAST_RIM,
  name: "a rim of at least 2.5 mm (common practice)",
};
