// A body of the console in words: whose it is and what of it; and a place in words.

import type { ConsoleBody } from "../fit/console-body.ts";
import { decimal } from "../geometry/number.ts";
import type { Vector } from "../geometry/space/vector.ts";

export const bodyWords = ({ panel, thing, what }: ConsoleBody): string => {
  const of = what === "" || what === thing ? thing : `${thing}, ${what}`;
  return panel === null ? of : `${panel}: ${of}`;
};

/** Forward, to the left, up, in mm. */
export const placeWords = ({ x, y, z }: Vector): string =>
  [x, y, z].map((value) => decimal(value, 1)).join(", ");
