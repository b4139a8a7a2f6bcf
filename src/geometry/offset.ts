// An outline moved outward (d > 0) or inward (d < 0) by an exact distance, arcs staying arcs.
// What can't be moved as one simple loop is refused with the reason; nothing is guessed or dropped.

import { type Contour, circle, type Loop } from "./contour.ts";
import { decimal } from "./number.ts";
import type { OffsetJoin } from "./offset-joint.ts";
import { offsetLoop } from "./offset-loop.ts";
import { samePlace } from "./tolerance.ts";

export type Offset =
  | { readonly kind: "offset"; readonly contour: Contour }
  | { readonly kind: "refused"; readonly why: string };

/**
 * `round` corners (the default) keep the distance everywhere; `miter` corners stay sharp up to `miterLimit`, then
 * are rounded. Either way corners that close up stay sharp, as they must.
 */
export const offsetContour = (
  contour: Contour,
  distance: number,
  join: OffsetJoin = "round",
): Offset => {
  if (distance === 0) return { kind: "offset", contour };
  if (contour.kind === "loop") return ofLoop(contour, distance, join);
  const radius = contour.radius + distance;
  return radius > samePlace
    ? { kind: "offset", contour: circle(contour.centre, radius) }
    : refused(`a circle of radius ${decimal(contour.radius, 4)} mm closes up`);
};

const ofLoop = (shape: Loop, distance: number, join: OffsetJoin): Offset => {
  const moved = offsetLoop(shape, distance, { join, lostEdges: "refused" });
  return moved.kind === "refused" ? refused(moved.why) : { kind: "offset", contour: moved.loop };
};

const refused = (why: string): Offset => ({ kind: "refused", why });
