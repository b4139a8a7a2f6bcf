// Islands: pieces of sheet that nothing holds once a legend is cut through it (the middle of an O).
// A stencil face has none in the characters that it is meant for; some of its signs may.

import type { Contour, Region } from "../geometry/contour.ts";

/** The outline of every island that cutting these openings right through would drop, in the order of the openings. */
export const islandsOf = (openings: readonly Region[]): readonly Contour[] =>
  openings.flatMap((opening) => [...opening.holes]);
