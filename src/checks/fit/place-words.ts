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
  // What rounds to nothing has no side: which it is would be the arithmetic's noise.
  const away = [millimetres(Math.abs(x)), millimetres(Math.abs(z))];
  const none = millimetres(0);
  const across = away[0] === none ? "in its middle" : `${away[0]} ${side} of its middle`;
  const deep = away[1] === none ? "level with the rails" : `${away[1]} ${level} the rails`;
  return `${millimetres(y)} along bay ${bay.id}, ${across}, ${deep}`;
};
