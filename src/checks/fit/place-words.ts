// Where in a console something is, in words that a builder can measure by.

import { pointIn } from "../../geometry/space/frame.ts";
import type { Vector } from "../../geometry/space/vector.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import { millimetres } from "../words.ts";

/**
 * `142 mm along bay aft (or before it begins, or beyond its end), 31 mm left of its middle, 12 mm behind the rails`; forward, left and up from the console's origin
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
    return [
      `${millimetres(Math.abs(at.x))} ${at.x < 0 ? "back" : "forward"}`,
      `${millimetres(Math.abs(at.y))} to the ${at.y < 0 ? "right" : "left"}`,
      `${millimetres(Math.abs(at.z))} ${at.z < 0 ? "below the floor" : "up"}`,
    ].join(", ");
  const { x, y, z } = pointIn(bay.frame, at);
  const side = x < 0 ? "left" : "right";
  const level = z < 0 ? "behind" : "in front of";
  // What rounds to nothing has no side: which it is would be the arithmetic's noise.
  const away = [millimetres(Math.abs(x)), millimetres(Math.abs(z))];
  const none = millimetres(0);
  const across = away[0] === none ? "in its middle" : `${away[0]} ${side} of its middle`;
  const deep = away[1] === none ? "level with the rails" : `${away[1]} ${level} the rails`;
  const beyond = y - bay.length;
  const along =
    y < 0
      ? `${millimetres(-y)} before bay ${bay.id} begins`
      : beyond > 0
        ? `${millimetres(beyond)} beyond the end of bay ${bay.id}`
        : `${millimetres(y)} along bay ${bay.id}`;
  return `${along}, ${across}, ${deep}`;
};
