// The seated operator in the space of the console, by the published sizes of the smallest and the largest person.

import type { OperatorDesign } from "../../design/console-design.ts";
import { type Vector, vector } from "../../geometry/space/vector.ts";
import { EYE_BEFORE_SEAT_BACK, SEATED_PERSON } from "../../standards/reach.ts";
import type { PosedOperator } from "./console-layout.ts";

export const posedOperator = (design: OperatorDesign): PosedOperator => {
  const { seatHeight, hand } = design;
  const [x, y] = design.at;
  const { eyeAboveSeat, shoulderAboveSeat, functionalReach, extendedReach } = SEATED_PERSON;
  const above = (forward: number, height: number): Vector =>
    vector(x + forward, y, seatHeight + height);
  const measured = design.eye === null ? null : vector(...design.eye);
  return {
    design,
    hand,
    seat: above(0, 0),
    eye: {
      small: measured ?? above(EYE_BEFORE_SEAT_BACK.distance, eyeAboveSeat.small),
      large: measured ?? above(EYE_BEFORE_SEAT_BACK.distance, eyeAboveSeat.large),
    },
    shoulder: {
      small: above(0, shoulderAboveSeat.small),
      large: above(0, shoulderAboveSeat.large),
    },
    functionalReach,
    extendedReach,
  };
};
