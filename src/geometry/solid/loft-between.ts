// A contour of a loft between two of its sections: corners move along straight lines, arcs keep their bulge.

import { type Contour, circle, loop, point, vertex } from "../contour.ts";
import { invariant } from "../invariant.ts";

/** At `fraction` (0 .. 1) of the way up. */
export const contourBetween = (
  below: Contour,
  above: Contour | undefined,
  fraction: number,
): Contour => {
  invariant(above !== undefined, "the sections of a loft have the same holes");
  const between = (low: number, high: number): number => low * (1 - fraction) + high * fraction;
  if (below.kind === "circle" && above.kind === "circle")
    return circle(
      point(between(below.centre.x, above.centre.x), between(below.centre.y, above.centre.y)),
      between(below.radius, above.radius),
    );
  invariant(
    below.kind === "loop" && above.kind === "loop",
    "the sections of a loft have contours of one kind",
  );
  return loop(
    below.vertices.map(({ x, y, bulge }, index) => {
      const facing = above.vertices[index];
      invariant(facing !== undefined, "the sections of a loft have the same vertices");
      return vertex(between(x, facing.x), between(y, facing.y), bulge);
    }),
  );
};
