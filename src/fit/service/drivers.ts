// Room for a straight driver before each fastener that holds a panel, from the panel's front outward. A lever or a knob
// counts wherever it moves: one that can be put aside stands in the way all the same, so that somebody looks.

import { type Mm, mm } from "../../geometry/quantity.ts";
import { pointOut } from "../../geometry/space/frame.ts";
import { vector } from "../../geometry/space/vector.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { DriverFact } from "../fit-facts.ts";
import { metOnWay } from "../met-on-way.ts";
import type { ServiceFigures } from "./service-figures.ts";

export const driverFacts = (
  panels: readonly PlacedPanel[],
  bodies: readonly ConsoleBody[],
  { driver }: ServiceFigures,
): readonly DriverFact[] =>
  panels.flatMap((panel) => {
    const others = bodies.filter((body) => mayBlock(body, panel));
    return panel.layout.mountHoles.map(({ id, at: { x, y } }) => {
      const [met] = metOnWay(driverWay(panel, { x, y, driver }), others);
      return {
        panel: panel.name,
        fastener: id,
        at: pointOut(panel.frame, vector(x, y, 0)),
        needs: driver,
        blocker: met?.body ?? null,
      };
    });
  });

/** Its own sheets have holes for the fastener and are judged on the panel; nothing of its rear stands in front. */
const mayBlock = (body: ConsoleBody, panel: PlacedPanel): boolean =>
  body.role !== "latch" &&
  (body.panel !== panel.name || body.role === "front" || body.role === "sweep");

/** Its round ends lie within its length. */
const driverWay = (
  { frame }: PlacedPanel,
  of: { readonly x: Mm; readonly y: Mm; readonly driver: ServiceFigures["driver"] },
): Parameters<typeof metOnWay>[0] => {
  const { x, y, driver } = of;
  const radius = mm(driver.diameter / 2);
  return {
    from: pointOut(frame, vector(x, y, radius)),
    to: pointOut(frame, vector(x, y, Math.max(radius, driver.length - radius))),
    radius,
  };
};
