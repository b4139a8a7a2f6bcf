// Where in a console something is, in words that a builder can measure by.

import { pointIn } from "../../geometry/space/frame.ts";
import type { Vector } from "../../geometry/space/vector.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import { millimetres } from "../words.ts";

/**
 * `142 mm along bay aft, 31 mm left of its middle, 12 mm behind the rails`; forward, left and up from the console's origin
 * where none of the panels stands in a bay.
 */
export const placeWords = (
  at: Vector,
  panels: readonly (string | null)[],
  { panels: placed, bays }: ConsoleLayout,
): string => {
  const places = placed.flatMap(({ name, place }) =>
    panels.includes(name) && place.kind === "bay" ? [place.bay] : [],
  );
  const bay = bays.find(({ id }) => id === places[0]);
  if (bay === undefined)
    return `${millimetres(at.x)} forward, ${millimetres(at.y)} to the left, ${millimetres(at.z)} up`;
  const { x, y, z } = pointIn(bay.frame, at);
  const side = x < 0 ? "left" : "right";
  const level = z < 0 ? "behind" : "in front of";
  return `${millimetres(y)} along bay ${bay.id}, ${millimetres(Math.abs(x))} ${side} of its middle, ${millimetres(Math.abs(z))} ${level} the rails`;
};
