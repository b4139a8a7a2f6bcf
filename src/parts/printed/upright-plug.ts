// The room of a plug that looks up from its board, seen from above: it stands over its own place.

import { type Contour, circle, type Point } from "../../geometry/contour.ts";

/** Half a two-way plug on 2.5 mm pitch: common practice. */
const RADIUS = 3;

export const uprightPlug = (at: Point): Contour => circle(at, RADIUS);
