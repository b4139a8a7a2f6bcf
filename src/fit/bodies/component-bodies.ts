// What is mounted on a panel as bodies: cases, nuts, tails and plugs behind, bezels and guards in front, and where levers,
// knobs and lids of guards move.

import type { Guard } from "../../catalogue/hardware.ts";
import type { PartFamily } from "../../catalogue/part.ts";
import type { PanelLayout, PlacedBody, PlacedComponent } from "../../layout/panel-layout.ts";
import type { ConsoleBodyRole } from "../console-body.ts";
import { partLatch } from "./latch-body.ts";
import { leverSweep } from "./lever-sweep.ts";
import { type BodyNames, prismBody, type StandingBody } from "./standing-body.ts";

export const componentBodies = ({ components }: PanelLayout): readonly StandingBody[] =>
  components.flatMap((component) => component.bodies.flatMap((body) => bodiesOf(component, body)));

const bodiesOf = (component: PlacedComponent, body: PlacedBody): readonly StandingBody[] => {
  // Room for a tool while the panel lies on the bench: nothing stands there in the console.
  const { role, low, high } = body;
  if (role === "spanner" || high <= low) return [];
  const names: BodyNames = {
    id: `${component.id}/${role}`,
    role: roleOf(role, low, component),
    thing: component.id,
    what: role,
    span: component.span,
  };
  const sweep = isMoved(component, body)
    ? leverSweep({ ...names, role: "sweep" }, component, body)
    : null;
  if (sweep !== null) return [sweep];
  return [
    prismBody(names, body.footprint, body),
    ...lidBodies(component, body, names),
    ...partLatch(names, component, body),
  ];
};

/** The lever itself, and a cap that sits on its upper half; a boot's foot stays where it is. */
const isMoved = ({ part, seat }: PlacedComponent, { role, low }: PlacedBody): boolean =>
  part.lever !== null &&
  (role === "lever" || (role === "cap" && low - seat >= part.lever.length / 2));

/** Of levers without a hinge's figures and of slides the record draws the button over its whole travel. */
const TRAVELLING: ReadonlySet<PartFamily> = new Set(["lever", "slide"]);

const roleOf = (
  role: Exclude<PlacedBody["role"], "spanner">,
  low: number,
  { part }: PlacedComponent,
): ConsoleBodyRole => {
  switch (role) {
    case "lever":
    case "knob":
      return "sweep";
    case "tails":
    case "plug":
    case "cable":
      return role;
    case "button":
      if (TRAVELLING.has(part.family)) return "sweep";
      return low < 0 ? "rear" : "front";
    case "case":
    case "board":
    case "nut":
    case "washer":
    case "bush":
    case "flange":
    case "shaft":
    case "needle":
    case "lens":
    case "glass":
    case "cap":
    case "guard":
      // z = 0 is the finished front: what begins behind it goes through the panel.
      return low < 0 ? "rear" : "front";
  }
};

/**
 * The lid of a guard swings up to its open height over a hinge at one end; which end the record does not say. The room over
 * the whole footprint holds the quarter turn about either.
 */
const lidBodies = (
  { fitted }: PlacedComponent,
  body: PlacedBody,
  names: BodyNames,
): readonly StandingBody[] => {
  const guard = fitted.find((hardware): hardware is Guard => hardware.kind === "guard");
  if (body.role !== "guard" || guard === undefined) return [];
  const open = body.low + guard.openHeight;
  if (open <= body.high) return [];
  const lid: BodyNames = { ...names, id: `${names.id}/lid`, role: "sweep", what: "guard's lid" };
  return [prismBody(lid, body.footprint, { low: body.high, high: open })];
};
