// Do two bodies stand at the same height, more than touching.

import { samePlace } from "../../geometry/tolerance.ts";
import type { PlacedBody } from "../../layout/panel-layout.ts";

type Level = Pick<PlacedBody, "low" | "high">;

export const shareHeight = (a: Level, b: Level): boolean =>
  a.low < b.high - samePlace && b.low < a.high - samePlace;
