// A way of looking at a console: which directions run to the right and up on the sheet, and which one comes toward the reader.
// Takes places in the console; gives places on the sheet at the drawing's scale.

import { type Point, point } from "../geometry/contour.ts";
import {
  cross,
  dot,
  minus,
  scaled,
  unitVector,
  type Vector,
  vector,
} from "../geometry/space/vector.ts";
import type { BayLayout } from "../layout/console/console-layout.ts";

export interface ConsoleView {
  readonly kind: "plan" | "side" | "front" | "section";
  /** "Plan", "Section through aft". */
  readonly title: string;
  readonly right: Vector;
  readonly up: Vector;
  readonly toward: Vector;
  /** 10 stands for 1:10. */
  readonly scale: number;
}

/** From above, forward up the sheet; from the operator's right side; from where the operator sits. */
export const PLAN: ConsoleView = {
  kind: "plan",
  title: "Plan",
  right: vector(0, -1, 0),
  up: vector(1, 0, 0),
  toward: vector(0, 0, 1),
  scale: 1,
};

export const SIDE: ConsoleView = {
  kind: "side",
  title: "Side, from the right",
  right: vector(1, 0, 0),
  up: vector(0, 0, 1),
  toward: vector(0, -1, 0),
  scale: 1,
};

export const FRONT: ConsoleView = {
  kind: "front",
  title: "Front",
  right: vector(0, -1, 0),
  up: vector(0, 0, 1),
  toward: vector(-1, 0, 0),
  scale: 1,
};

/** Steeper than this (45 degrees) a bay is a front: its section is looked at from above. */
const STEEP = Math.SQRT1_2;

/** Across a bay, looking along it; up on the sheet is as upright as the cut allows. */
export const sectionAcross = (bay: BayLayout): ConsoleView => {
  const along = bay.frame.y;
  const isSteep = Math.abs(along.z) > STEEP;
  const toward = isSteep && along.z > 0 ? along : scaled(along, -1);
  const wanted = isSteep ? vector(1, 0, 0) : vector(0, 0, 1);
  const up = unitVector(minus(wanted, scaled(along, dot(along, wanted))));
  return {
    kind: "section",
    title: `Section ${bay.id}`,
    right: cross(up, toward),
    up,
    toward,
    scale: 1,
  };
};

export const onSheet = (view: ConsoleView, at: Vector): Point =>
  point(dot(view.right, at) / view.scale, dot(view.up, at) / view.scale);

/** How near to the reader. */
export const nearness = (view: ConsoleView, at: Vector): number => dot(view.toward, at);
