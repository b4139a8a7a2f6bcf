// A remedy that moves a component by changing the one number that places it along an axis.
// Where no number does (centred, in line), there is no edit to offer.

import type { AxisPlace } from "../design/panel-design.ts";
import { spanOf } from "../design/written.ts";
import type { Remedy } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import type { PlacedComponent } from "../layout/panel-layout.ts";
import type { PanelFacts } from "./rule.ts";

export interface Move {
  readonly axis: "across" | "along";
  /** By how much at least, in mm, with its sign: right and up are positive. */
  readonly by: number;
}

/** Distances in a design are round numbers: a move ends on the next half millimetre beyond what is needed. */
const STEP = 0.5;

export const moveRemedy = (
  component: PlacedComponent,
  move: Move,
  facts: PanelFacts,
): readonly Remedy[] => {
  const place = component.place[move.axis];
  const number = placingNumber(place);
  if (number === null) return [];
  const wanted = number.value + number.sign * move.by;
  const rounded =
    number.sign * move.by > 0 ? Math.ceil(wanted / STEP) * STEP : Math.floor(wanted / STEP) * STEP;
  const span = component.place.written.keys[number.key];
  if (span === undefined || rounded <= 0) return [];
  const text = `${decimal(rounded, 3)} mm`;
  const title = `${number.key}: ${text} (${component.entry})`;
  return [{ title, edits: [facts.edit(spanOf(component.place.written, number.key), text)] }];
};

const placingNumber = (
  place: AxisPlace,
): { readonly key: string; readonly value: number; readonly sign: number } | null => {
  switch (place.kind) {
    case "from-low":
      return { key: place.key, value: place.distance, sign: 1 };
    case "from-high":
      return { key: place.key, value: place.distance, sign: -1 };
    case "beside":
      return { key: place.measure, value: place.distance, sign: place.toward === "high" ? 1 : -1 };
    case "centre":
    case "low-edge":
    case "high-edge":
    case "in-line":
      return null;
  }
};

/** The move that brings `b` away from `a` until `need` more millimetres lie between them, along the axis they already lie apart on. */
export const awayFrom = (a: PlacedComponent, b: PlacedComponent, need: number): Move => {
  const dx = b.at.x - a.at.x;
  const dy = b.at.y - a.at.y;
  return Math.abs(dx) >= Math.abs(dy)
    ? { axis: "across", by: dx >= 0 ? need : -need }
    : { axis: "along", by: dy >= 0 ? need : -need };
};
