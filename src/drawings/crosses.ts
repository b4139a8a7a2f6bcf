// Centre marks.

import type { Path, Point } from "../geometry/contour.ts";
import { segment } from "./items.ts";

export const segmentsOfCross = (at: Point, arm: number): readonly Path[] => [
  segment(at.x - arm, at.y, at.x + arm, at.y),
  segment(at.x, at.y - arm, at.x, at.y + arm),
];
