// The shoulder of the hand that works, of a 5th-percentile woman, in the plane of the seat back.

import { mm } from "../../geometry/quantity.ts";
import { plus, type Vector, vector } from "../../geometry/space/vector.ts";
import type { PosedOperator } from "../../layout/console/console-layout.ts";

/**
 * Across the points of the shoulders of a 5th-percentile woman: 325 mm, British adults of 19 to 65, Pheasant, Bodyspace;
 * seen in a secondary copy.
 */
const SHOULDER_BREADTH = {
  breadth: mm(325),
  source: "Pheasant, Bodyspace: across the shoulders, 5th-percentile woman (secondary copy)",
} as const;

/**
 * Half the shoulder breadth aside, where the arm begins. From the middle of the back a side console on the working side
 * would be told 160 mm further than it is, and one on the other side nearer, which is the dangerous error.
 */
export const workingShoulder = ({ shoulder, hand }: PosedOperator): Vector => {
  const aside = (hand === "right" ? -1 : 1) * (SHOULDER_BREADTH.breadth / 2);
  return plus(shoulder.small, vector(0, aside, 0));
};
