// The door of this folder: what it takes to work on a console once it stands. Hands between panels, drivers before their
// fasteners, panels out of their places, looms long enough to lay them down. Facts only.

import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { FitFacts } from "../fit-facts.ts";
import { driverFacts } from "./drivers.ts";
import { handFacts } from "./hands.ts";
import { liftFacts } from "./lifts.ts";
import { loopFacts } from "./loops.ts";
import type { ServiceFigures } from "./service-figures.ts";

export type ServiceFacts = Pick<FitFacts, "hands" | "drivers" | "lifts" | "loops">;

export const serviceFacts = (
  layout: ConsoleLayout,
  bodies: readonly ConsoleBody[],
  figures: ServiceFigures,
): ServiceFacts => ({
  hands: handFacts(layout.panels),
  drivers: driverFacts(layout.panels, bodies, figures),
  lifts: liftFacts(layout.panels, bodies, figures),
  loops: loopFacts(layout, bodies, figures),
});
