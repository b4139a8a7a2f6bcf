// What service asks for where no standard says it: room for a driver and for hands, and slack of a loom. Each is usual until
// the workshop's `house-rules` say their own.

import type { WorkshopDesign } from "../../design/workshop-design.ts";
import type { LimitSource } from "../../diagnostics/finding.ts";
import type { ServiceFigures } from "../../fit/service/service-figures.ts";
import { decimal } from "../../geometry/number.ts";
import { type HouseFigure, houseFigure, isOwnFigure } from "../house-rule.ts";
import { millimetres } from "../words.ts";

/**
 * Less than twice the 4.76 mm from a rail's stud to the panel's end, so that a neighbour's thicker stack is not in its way.
 * Common practice.
 */
const DRIVER_DIAMETER: HouseFigure = { key: "driver-diameter", usual: 8 };

/** A driver's blade without its handle: common practice. */
const DRIVER_LENGTH: HouseFigure = { key: "driver-length", usual: 150 };

/** Two hands under a panel that is lifted off: common practice. */
const LIFT_ROOM: HouseFigure = { key: "lift-room", usual: 100 };

/** A hand's width at the plug: common practice. */
const LOOP_SLACK: HouseFigure = { key: "loop-slack", usual: 100 };

interface Workshop {
  readonly workshop: WorkshopDesign | null;
}

export const serviceFigures = (of: Workshop): ServiceFigures => ({
  driver: { diameter: houseFigure(of, DRIVER_DIAMETER), length: houseFigure(of, DRIVER_LENGTH) },
  liftRoom: houseFigure(of, LIFT_ROOM),
  loopSlack: houseFigure(of, LOOP_SLACK),
});

/** Two figures, each with who says it: a shop that sets the one has not set the other. */
export const driverSource = (of: Workshop): LimitSource => {
  const { diameter, length } = serviceFigures(of).driver;
  const across = `a straight driver ${millimetres(diameter)} across`;
  const long = `${millimetres(length)} long`;
  const own = [DRIVER_DIAMETER, DRIVER_LENGTH].filter((figure) => isOwnFigure(of, figure));
  if (own.length !== 1)
    return sourceOf(of, [DRIVER_DIAMETER, DRIVER_LENGTH], `${across} and ${long}`);
  const said = (figure: HouseFigure): string =>
    isOwnFigure(of, figure)
      ? `house-rules: ${figure.key}`
      : `common practice, ${figure.key} sets it`;
  return {
    kind: "workshop",
    name: `${across} (${said(DRIVER_DIAMETER)}) and ${long} (${said(DRIVER_LENGTH)})`,
  };
};

/** Of the one of the two that something stands in. */
export const driverSideSource = (of: Workshop, side: "diameter" | "length"): LimitSource => {
  const { diameter, length } = serviceFigures(of).driver;
  return side === "diameter"
    ? sourceOf(of, [DRIVER_DIAMETER], `a straight driver ${millimetres(diameter)} across`)
    : sourceOf(of, [DRIVER_LENGTH], `a straight driver ${millimetres(length)} long`);
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
    `the way from the tie over the shared edge to the plug, and ${millimetres(serviceFigures(of).loopSlack)} of slack`,
  );

/** The workshop's own where it has set all of them; the keys that set them either way. */
const sourceOf = (of: Workshop, figures: readonly HouseFigure[], says: string): LimitSource => {
  const keys = figures.map(({ key }) => key).join(", ");
  return figures.every((figure) => isOwnFigure(of, figure))
    ? { kind: "workshop", name: `house-rules: ${keys}: ${says}` }
    : { kind: "house-rule", name: `${says} (common practice)`, key: keys };
};
