// Bounding box of a recipe, exact for its arcs: how far it reaches in six directions. Of a composed solid it is the box
// of what is added, whatever is cut away.

import type { Contour, Point } from "../contour.ts";
import { isBesideBow } from "../edge.ts";
import { type ArcEdge, edgesOf } from "../edges.ts";
import { invariant } from "../invariant.ts";
import { type Mm, mm } from "../quantity.ts";
import type { Vector } from "../space/vector.ts";
import type { Solid } from "./solid.ts";
import { turnedBack, turnMatrix } from "./turn.ts";

export interface SolidExtent {
  readonly minX: Mm;
  readonly minY: Mm;
  readonly minZ: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
  readonly maxZ: Mm;
}

export const recipeExtent = (solid: Solid): SolidExtent => ({
  minX: mm(-reach(solid, { x: -1, y: 0, z: 0 })),
  minY: mm(-reach(solid, { x: 0, y: -1, z: 0 })),
  minZ: mm(-reach(solid, { x: 0, y: 0, z: -1 })),
  maxX: reach(solid, { x: 1, y: 0, z: 0 }),
  maxY: reach(solid, { x: 0, y: 1, z: 0 }),
  maxZ: reach(solid, { x: 0, y: 0, z: 1 }),
});

/** The greatest distance from the origin along a unit vector that any point of the solid has. */
const reach = (solid: Solid, along: Vector): Mm => {
  switch (solid.kind) {
    case "layered":
      return farthest(
        solid.layers.flatMap(({ from, to, regions }) =>
          regions.map(
            ({ outline }) =>
              contourReach(outline.contour, along) + Math.max(from * along.z, to * along.z),
          ),
        ),
      );
    case "revolved": {
      const outward = Math.sqrt(along.x * along.x + along.y * along.y);
      const axis = solid.at.x * along.x + solid.at.y * along.y;
      return mm(axis + contourReach(solid.profile, { x: outward, y: along.z }));
    }
    case "lofted":
      return farthest(
        solid.sections.map(
          ({ outline, height }) => contourReach(outline, along) + height * along.z,
        ),
      );
    case "composed":
      return farthest(solid.add.map((piece) => reach(piece, along)));
    case "placed": {
      const moved = solid.to.x * along.x + solid.to.y * along.y + solid.to.z * along.z;
      return mm(moved + reach(solid.solid, turnedBack(turnMatrix(solid.turn), along)));
    }
  }
};

const farthest = (reaches: readonly number[]): Mm => {
  invariant(reaches.length > 0, "a solid with an extent has material");
  return mm(reaches.reduce((most, value) => Math.max(most, value)));
};

const contourReach = (
  contour: Contour,
  along: { readonly x: number; readonly y: number },
): number => {
  const size = Math.sqrt(along.x * along.x + along.y * along.y);
  if (contour.kind === "circle") return dot(contour.centre, along) + contour.radius * size;
  return farthest(
    edgesOf(contour).map((edge) => {
      const start = dot(edge.from, along);
      return edge.kind === "line" ? start : Math.max(start, bowReach(edge, along, size));
    }),
  );
};

/** Where the arc's circle reaches farthest, if the arc goes there. */
const bowReach = (
  arc: ArcEdge,
  along: { readonly x: number; readonly y: number },
  size: number,
): number => {
  if (size === 0) return dot(arc.from, along);
  const x = arc.centre.x + (arc.radius * along.x) / size;
  const y = arc.centre.y + (arc.radius * along.y) / size;
  return isBesideBow(arc, x, y) ? dot(arc.centre, along) + arc.radius * size : dot(arc.from, along);
};

const dot = (at: Point, along: { readonly x: number; readonly y: number }): number =>
  at.x * along.x + at.y * along.y;
