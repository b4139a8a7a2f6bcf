// Where one place lies from another, as a clock's hand points: degrees clockwise from twelve, 0 to less than 360.

import { arcTangent2, toDegrees } from "../../src/geometry/trigonometry.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";

export const clockAngle = (at: Shift, centre: Shift): number =>
  (toDegrees(arcTangent2(at.x - centre.x, at.y - centre.y)) + FULL_TURN) % FULL_TURN;

export const FULL_TURN = 360;
