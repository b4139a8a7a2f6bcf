// How far a point lies from a recipe: no mesh and no kernel. Negative inside. What is given is never more than the true
// distance, and 0 on the surface itself, arcs exact.

import { containsPoint } from "../containment.ts";
import { type Contour, type Loop, type Point, point } from "../contour.ts";
import { pointToContour } from "../distance.ts";
import { gapFromPoint } from "../edge-distance.ts";
import { edgesOf } from "../edges.ts";
import { invariant } from "../invariant.ts";
import { type Mm, mm } from "../quantity.ts";
import { minus, type Vector, vector, vectorLength } from "../space/vector.ts";
import { contourBetween } from "./loft-between.ts";
import type { LoftedSolid, RevolvedSolid, Solid, SolidLayer } from "./solid.ts";
import { turnedBack, turnMatrix } from "./turn.ts";

/** A point in the recipe's own coordinates. */
export const solidDistance = (solid: Solid, at: Vector): Mm => {
  switch (solid.kind) {
    case "layered":
      return least(solid.layers.map((layer) => layerDistance(layer, at)));
    case "revolved":
      return revolvedDistance(solid, at);
    case "lofted":
      return loftedDistance(solid, at);
    case "composed": {
      const added = least(solid.add.map((piece) => solidDistance(piece, at)));
      // What is cut out is air: from within it, the way to the material is at least the way to the cut's own wall.
      return solid.cut.reduce((far, cut) => mm(Math.max(far, -solidDistance(cut, at))), added);
    }
    case "placed": {
      const back = turnedBack(turnMatrix(solid.turn), minus(at, solid.to));
      return solidDistance(solid.solid, back);
    }
  }
};

const least = (all: readonly number[]): Mm => {
  invariant(all.length > 0, "a solid that something is measured from has material");
  return mm(all.reduce((near, one) => Math.min(near, one)));
};

const layerDistance = ({ from, to, regions }: SolidLayer, at: Vector): Mm => {
  const spot = point(at.x, at.y);
  const across = least(
    regions.map(({ outline, holes }) =>
      holes.reduce(
        (far, hole) => Math.max(far, -insideNegative(hole.contour, spot)),
        insideNegative(outline.contour, spot),
      ),
    ),
  );
  return joined(across, Math.max(from - at.z, at.z - to));
};

/** Outside a prism past its edge both count; inside, the nearer wall. */
const joined = (across: number, upright: number): Mm =>
  across <= 0 && upright <= 0
    ? mm(Math.max(across, upright))
    : hypotenuse(Math.max(across, 0), Math.max(upright, 0));

const hypotenuse = (a: number, b: number): Mm => mm(Math.sqrt(a * a + b * b));

const insideNegative = (contour: Contour, at: Point): number => {
  const { gap } = pointToContour(at, contour);
  return containsPoint(contour, at) ? -gap : gap;
};

const revolvedDistance = ({ at, profile }: RevolvedSolid, spot: Vector): Mm => {
  const aside = hypotenuse(spot.x - at.x, spot.y - at.y);
  const where = point(aside, spot.z);
  const gap = profileGap(profile, where);
  return mm(containsPoint(profile, where) ? -gap : gap);
};

/** The stretch of the profile that lies on the axis is no surface. */
const profileGap = (profile: Loop, where: Point): Mm =>
  least(
    edgesOf(profile)
      .filter(({ kind, from, to }) => kind === "arc" || from.x !== 0 || to.x !== 0)
      .map((edge) => gapFromPoint(where, edge).gap),
  );

/** Its flanks lean: the distance across is shortened by the steepest lean of any corner. */
const loftedDistance = ({ sections }: LoftedSolid, at: Vector): Mm => {
  const distances = sections.slice(1).map((above, index) => {
    const below = sections[index]!;
    const height = above.height - below.height;
    const fraction = height === 0 ? 0 : Math.min(1, Math.max(0, (at.z - below.height) / height));
    const lean = height === 0 ? 0 : mostShift(below.outline, above.outline) / height;
    const spot = point(at.x, at.y);
    const outline = insideNegative(contourBetween(below.outline, above.outline, fraction), spot);
    const across = below.holes.reduce(
      (far, hole, number) =>
        Math.max(far, -insideNegative(contourBetween(hole, above.holes[number], fraction), spot)),
      outline,
    );
    const upright = Math.max(below.height - at.z, at.z - above.height);
    return joined(across / Math.sqrt(1 + lean * lean), upright);
  });
  return least(distances);
};

/** How far a corner moves from one section to the next. */
const mostShift = (below: Contour, above: Contour): number => {
  if (below.kind === "circle" && above.kind === "circle") {
    const { x, y } = minus(atZero(below.centre), atZero(above.centre));
    return Math.sqrt(x * x + y * y) + Math.abs(above.radius - below.radius);
  }
  invariant(below.kind === "loop" && above.kind === "loop", "sections have contours of one kind");
  return below.vertices.reduce((most, corner, index) => {
    const facing = above.vertices[index]!;
    return Math.max(most, vectorLength(minus(atZero(corner), atZero(facing))));
  }, 0);
};

const atZero = ({ x, y }: Point): Vector => vector(x, y, 0);
