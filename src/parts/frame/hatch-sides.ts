// On which sides of a section its hatch may be: where it is written, unless another unit stands before it there; then on
// those that are free. Takes the units' plans; gives the sides in the order in which they are tried.

import type { FrameSide } from "../../design/frame-design.ts";
import { convexMeet } from "./convex.ts";
import { cornersOnFloor, type Footprint, footprint } from "./footprint.ts";
import { HATCH_ROOM } from "./frame-practice.ts";
import type { UnitSection } from "./unit-bolts.ts";
import { floorOf } from "./unit-overlaps.ts";
import type { UnitPlan } from "./unit-plan.ts";

export interface HatchSides {
  readonly written: FrameSide;
  /** The unit that stands before the written side; null where none does. */
  readonly against: UnitPlan | null;
  /** Empty where all are taken. */
  readonly sides: readonly FrameSide[];
}

/** null where no hatch is written. */
export const hatchSides = (at: UnitSection, units: readonly UnitPlan[]): HatchSides | null => {
  const { hatch: written } = at.section.design;
  if (written === "none") return null;
  const against = standingBefore(at, written, units);
  if (against === null) return { written, against, sides: [written] };
  const sides = OTHERS[written].filter((side) => standingBefore(at, side, units) === null);
  return { written, against, sides };
};

/** The same from the other side first. */
const OTHERS: Readonly<Record<FrameSide, readonly FrameSide[]>> = {
  left: ["right", "front", "back"],
  right: ["left", "front", "back"],
  front: ["back", "right", "left"],
  back: ["front", "right", "left"],
};

const standingBefore = (
  { unit, section }: UnitSection,
  side: FrameSide,
  units: readonly UnitPlan[],
): UnitPlan | null => {
  const room = cornersOnFloor(roomBefore(footprint(section), side), unit.profile);
  return (
    units.find(
      (other) => other !== unit && floorOf(other).some((floor) => convexMeet(room, floor)),
    ) ?? null
  );
};

const roomBefore = ({ ends, across }: Footprint, side: FrameSide): Footprint => {
  switch (side) {
    case "left":
      return { ends, across: { from: across.from - HATCH_ROOM, to: across.from } };
    case "right":
      return { ends, across: { from: across.to, to: across.to + HATCH_ROOM } };
    case "front":
      return { ends: { from: ends.to, to: ends.to + HATCH_ROOM }, across };
    case "back":
      return { ends: { from: ends.from - HATCH_ROOM, to: ends.from }, across };
  }
};
