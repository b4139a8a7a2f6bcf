// A component as it looks from the front: pieces from the panel outward, in panel coordinates.
// Sizes come from the placed bodies and the openings of the face; what has no body of its own (pins, digits) is a likeness.

import type { Contour } from "../geometry/contour.ts";
import { contourExtent } from "../geometry/measure.ts";
import type { CutOut, PlacedBody, PlacedComponent } from "../layout/panel-layout.ts";
import { connectorArt } from "./art-connector.ts";
import { displayArt } from "./art-display.ts";
import { instrumentArt, servoArt } from "./art-instrument.ts";
import { knobArt } from "./art-knob.ts";
import { guardArt, toggleArt } from "./art-lever.ts";
import { alertTone, lampArt, pressedArt } from "./art-pressed.ts";
import { around, at, type Scene } from "./art-scene.ts";
import type { ArtPiece } from "./tone.ts";

/** `own`: what the foremost layer opens for it. */
export const componentArt = (
  component: PlacedComponent,
  own: readonly CutOut[],
): readonly ArtPiece[] => {
  const scene = sceneOf(component, own);
  return [
    ...openingArt(scene),
    ...fastenedArt(scene),
    ...familyArt(scene),
    ...guardArt(scene),
    ...screwArt(scene),
  ];
};

const sceneOf = (component: PlacedComponent, own: readonly CutOut[]): Scene => {
  const bodies = component.bodies.filter(isSeen).toSorted((a, b) => a.high - b.high);
  const openings = own.filter(isOpening).map(({ contour }) => contour);
  return {
    component,
    bodies,
    openings,
    screws: component.clamped.first === 0 ? own.filter(({ purpose }) => purpose === "screw") : [],
    body: (...roles) => bodies.findLast(({ role }) => roles.includes(role)) ?? null,
  };
};

/** A mated plug and a spanner are not what an operator looks at. */
const HIDDEN: readonly PlacedBody["role"][] = ["plug", "cable", "tails", "spanner", "board"];

const isSeen = (body: PlacedBody): boolean => !HIDDEN.includes(body.role);

const isOpening = ({ purpose }: CutOut): boolean =>
  purpose === "clamp" || purpose === "front-clearance" || purpose === "window";

const openingArt = ({ openings }: Scene): readonly ArtPiece[] =>
  openings.length === 0 ? [] : [{ kind: "area", tone: "well", contours: openings }];

/** Nut, washers and bush where they stand in front of what they clamp. */
const fastenedArt = (scene: Scene): readonly ArtPiece[] => {
  if (scene.component.part.hold.seat === "front") return [];
  return scene.bodies.flatMap((body): readonly ArtPiece[] => {
    if (body.role === "washer")
      return [{ kind: "area", tone: "metal-dark", contours: [body.footprint] }];
    if (body.role === "nut")
      return [{ kind: "area", tone: "metal", contours: [hexagonIn(body.footprint, scene)] }];
    if (body.role === "bush")
      return [{ kind: "area", tone: "metal-light", contours: [body.footprint] }];
    return [];
  });
};

/** A nut's body is the circle over its corners; what is seen is the hexagon. */
const hexagonIn = (circle: Contour, scene: Scene): Contour => {
  const box = contourExtent(circle);
  return around(at(scene), { radius: (box.maxX - box.minX) / 2, corners: 6, first: 0 });
};

const familyArt = (scene: Scene): readonly ArtPiece[] => {
  if (scene.component.fitted.some(({ kind }) => kind === "knob")) return knobArt(scene);
  switch (scene.component.part.family) {
    case "toggle":
    case "lever":
      return toggleArt(scene);
    case "rotary-switch":
    case "potentiometer":
    case "encoder":
      return knobArt(scene);
    case "rocker":
    case "slide":
    case "thumbwheel":
    case "push-button":
    case "key":
    case "keypad":
    case "fuse-holder":
    case "key-switch":
      return pressedArt(scene);
    case "lamp":
      return lampArt(scene, alertTone(scene.component));
    case "display":
      return displayArt(scene);
    case "instrument":
      return instrumentArt(scene);
    case "servo":
      return servoArt(scene);
    case "connector":
    case "speaker":
      return connectorArt(scene);
  }
};

/** Heads of screws that go through the face. */
const screwArt = (scene: Scene): readonly ArtPiece[] => {
  const { hold } = scene.component.part;
  if (hold.kind !== "screws") return [];
  return scene.screws.flatMap((screw): readonly ArtPiece[] => {
    const head = hold.holes[0]?.head ?? 0;
    const rim = around(screw.centre, { radius: head / 2, corners: 0, first: 0 });
    const recess = around(screw.centre, { radius: head / 4, corners: 6, first: 0 });
    return [
      { kind: "area", tone: "metal", contours: [rim] },
      { kind: "area", tone: "metal-dark", contours: [recess] },
    ];
  });
};
