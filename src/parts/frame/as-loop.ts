// An outline that is a loop by how it was made: of corners, mirrored or cut into. No circle comes of those.

import type { Contour, Loop } from "../../geometry/contour.ts";
import { invariant } from "../../geometry/invariant.ts";

export const asLoop = (contour: Contour): Loop => {
  invariant(contour.kind === "loop", "the outline of a board is a loop");
  return contour;
};
