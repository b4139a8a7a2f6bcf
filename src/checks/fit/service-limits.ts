// What service asks for where no standard says it: room for a driver and for hands, and slack of a loom. Each is usual until
// the workshop's `house-rules` say their own.

import type { WorkshopDesign } from "../../design/workshop-design.ts";
import type { LimitSource } from "../../diagnostics/finding.ts";
import type { ServiceFigures } from "../../fit/service/service-figures.ts";
import { decimal } from "../../geometry/number.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { millimetres } from "../words.ts";

/** A house rule without the sentence that says it: that takes more than one of them. */
type Figure = Omit<HouseRule, "name">;

/**
 * Less than twice the 4.76 mm from a rail's stud to the panel's end, so that a neighbour's thicker stack is not in its way.
 * Common practice.
 */
const DRIVER_DIAMETER: Figure = { key: "driver-diameter", usual: 8 };

/** A driver's blade without its handle: common practice. */
const DRIVER_LENGTH: Figure = { key: "driver-length", usual: 150 };

/** Two hands under a panel that is lifted off: common practice. */
const LIFT_ROOM: Figure = { key: "lift-room", usual: 100 };

/** A hand's width at the plug: common practice. */
const LOOP_SLACK: Figure = { key: "loop-slack", usual: 100 };

interface Workshop {
  readonly workshop: WorkshopDesign | null;
}

export const serviceFigures = (of: Workshop): ServiceFigures => ({
  driver: { diameter: limitOf(of, DRIVER_DIAMETER), length: limitOf(of, DRIVER_LENGTH) },
  liftRoom: limitOf(of, LIFT_ROOM),
  loopSlack: limitOf(of, LOOP_SLACK),
});

const limitOf = (of: Workshop, figure: Figure): ServiceFigures["liftRoom"] =>
  houseLimit(of, { ...figure, name: "" }).limit;

export const driverSource = (of: Workshop): LimitSource => {
  const { diameter, length } = serviceFigures(of).driver;
  return sourceOf(
    of,
    [DRIVER_DIAMETER, DRIVER_LENGTH],
    `a straight driver ${millimetres(diameter)} across and ${millimetres(length)} long`,
  );
};

/** `most`: the tilt up to which a way out is tried. */
export const liftSource = (of: Workshop, most: number): LimitSource =>
  sourceOf(
    of,
    [LIFT_ROOM],
    `the way out, straight or tilted up to ${decimal(most, 0)} degrees, and ${millimetres(serviceFigures(of).liftRoom)} for hands`,
  );

export const loopSource = (of: Workshop): LimitSource =>
  sourceOf(
    of,
    [LOOP_SLACK],
    `from the tie over the shared edge to the plug, and ${millimetres(serviceFigures(of).loopSlack)} of slack`,
  );

/** The workshop's own where it has set any of them; the keys that set them either way. */
const sourceOf = (of: Workshop, figures: readonly Figure[], says: string): LimitSource => {
  const keys = figures.map(({ key }) => key);
  const own = keys.filter((key) => of.workshop?.houseRules[key] !== undefined);
  return own.length > 0
    ? { kind: "workshop", name: `house-rules: ${own.join(", ")}: ${says}` }
    : { kind: "house-rule", name: `${says} (common practice)`, key: keys.join(", ") };
};
