// The components of a panel that a hand touches, and where in the console each is touched.

import { extentCentre } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { pointOut } from "../geometry/space/frame.ts";
import { type Vector, vector } from "../geometry/space/vector.ts";
import type { PlacedPanel } from "../layout/console/console-layout.ts";
import type { PlacedBody, PlacedComponent } from "../layout/panel-layout.ts";

export type Touched = PlacedComponent & {
  readonly grasp: NonNullable<PlacedComponent["grasp"]>;
};

export const touchedOf = ({ layout }: PlacedPanel): readonly Touched[] =>
  layout.components.filter(
    (component): component is Touched => component.grasp !== null && component.part.hand !== "none",
  );

/** The middle of what a hand takes hold of, at its top. */
export const touchPoint = (component: Touched, panel: PlacedPanel): Vector => {
  const { x, y } = extentCentre(contourExtent(component.grasp));
  return pointOut(panel.frame, vector(x, y, graspTop(component)));
};

/** z of what is taken hold of, in panel coordinates; the panel's own front where nothing stands before it. */
export const graspTop = ({ bodies }: PlacedComponent): Mm =>
  mm(bodies.reduce((top, { role, high }) => (HELD.has(role) ? Math.max(top, high) : top), 0));

/** What the fingers meet: not the nut, the flange or the glass. */
const HELD: ReadonlySet<PlacedBody["role"]> = new Set([
  "guard",
  "knob",
  "cap",
  "lever",
  "button",
  "shaft",
  "case",
]);
