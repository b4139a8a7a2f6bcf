// Room for a straight driver before each fastener that holds a panel, from the panel's front outward. A lever or a knob
// counts wherever it moves: one that can be put aside stands in the way all the same, so that somebody looks.

import { type Mm, mm } from "../../geometry/quantity.ts";
import { pointOut } from "../../geometry/space/frame.ts";
import { vector } from "../../geometry/space/vector.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { DriverFact, DriverStop } from "../fit-facts.ts";
import { metOnWay, type Way } from "../met-on-way.ts";
import type { ServiceFigures } from "./service-figures.ts";

export const driverFacts = (
  panels: readonly PlacedPanel[],
  bodies: readonly ConsoleBody[],
  { driver }: ServiceFigures,
): readonly DriverFact[] =>
  panels.flatMap((panel) => {
    const others = bodies.filter((body) => mayBlock(body, panel));
    return panel.layout.mountHoles.map(({ id, at: { x, y } }) => {
      const met = driverStop(panel, { x, y, driver }, others);
      return {
        panel: panel.name,
        fastener: id,
        at: pointOut(panel.frame, vector(x, y, 0)),
        needs: driver,
        met,
      };
    });
  });

/** Its own sheets have holes for the fastener and are judged on the panel; nothing of its rear stands in front. */
const mayBlock = (body: ConsoleBody, panel: PlacedPanel): boolean =>
  body.role !== "latch" &&
  (body.panel !== panel.name || body.role === "front" || body.role === "sweep");

interface Driver {
  readonly x: Mm;
  readonly y: Mm;
  readonly driver: ServiceFigures["driver"];
}

const driverStop = (
  panel: PlacedPanel,
  of: Driver,
  others: readonly ConsoleBody[],
): DriverStop | null => {
  const [met] = metOnWay(driverWay(panel, of, of.driver.diameter), others);
  if (met === undefined) return null;
  const blocker = met.body;
  const [onAxis] = metOnWay(driverWay(panel, of, 0), [blocker]);
  return onAxis === undefined
    ? { blocker, side: "diameter", free: widestFree(panel, of, blocker) }
    : { blocker, side: "length", free: onAxis.along };
};

/** A driver lies within every wider one, so that halving finds the widest that goes past. */
const widestFree = (panel: PlacedPanel, of: Driver, body: ConsoleBody): Mm => {
  let [free, met] = [0, of.driver.diameter as number];
  while (met - free > WIDTH_FOUND_WITHIN) {
    const middle = (free + met) / 2;
    if (metOnWay(driverWay(panel, of, middle), [body]).length === 0) free = middle;
    else met = middle;
  }
  return mm(free);
};

/** A tenth of what anybody writes of a driver. */
const WIDTH_FOUND_WITHIN = 0.01;

/** Its round ends lie within its length. */
const driverWay = ({ frame }: PlacedPanel, { x, y, driver }: Driver, diameter: number): Way => {
  const radius = mm(diameter / 2);
  return {
    from: pointOut(frame, vector(x, y, radius)),
    to: pointOut(frame, vector(x, y, Math.max(radius, driver.length - radius))),
    radius,
  };
};
