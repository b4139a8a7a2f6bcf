// A recipe as convex pieces that hold all of it. A layer gives a prism for its outline; a revolved, lofted or composed solid
// the hull of each of its parts. Kept with the recipe: it is asked for at every step of a drag.

import { circle, point } from "../../geometry/contour.ts";
import type { Mesh } from "../../geometry/solid/mesh.ts";
import type { LoftedSolid, RevolvedSolid, Solid } from "../../geometry/solid/solid.ts";
import { turnMatrix } from "../../geometry/solid/turn.ts";
import { type Frame, pointOut } from "../../geometry/space/frame.ts";
import { type Vector, vector } from "../../geometry/space/vector.ts";
import type { BodyShape } from "../console-body.ts";
import { type ConvexPiece, convexPiece, type Filling } from "./convex-piece.ts";
import { layeredPieces } from "./layered-pieces.ts";
import { outlineCorners } from "./outline-corners.ts";

export const shapePieces = (shape: BodyShape): readonly ConvexPiece[] => {
  const recipe = shape.kind === "recipe" ? shape.solid : shape.mesh;
  const known = KNOWN.get(recipe);
  if (known !== undefined) return known;
  const made = shape.kind === "recipe" ? solidPieces(shape.solid) : [meshPiece(shape.mesh)];
  KNOWN.set(recipe, made);
  return made;
};

const KNOWN = new WeakMap<Solid | Mesh, readonly ConvexPiece[]>();

const UNKNOWN: Filling = { kind: "unknown" };

const solidPieces = (solid: Solid): readonly ConvexPiece[] => {
  switch (solid.kind) {
    case "layered":
      return layeredPieces(solid);
    case "revolved":
      return [convexPiece(revolvedCorners(solid), UNKNOWN)];
    case "lofted":
      return [convexPiece(loftedCorners(solid), UNKNOWN)];
    case "composed": {
      const added = solid.add.flatMap(solidPieces);
      return solid.cut.length === 0
        ? added
        : added.map((piece) => ({ ...piece, filling: UNKNOWN }));
    }
    case "placed": {
      const { x, y, z } = solid.to;
      const frame: Frame = { ...turnMatrix(solid.turn), origin: vector(x, y, z) };
      return solidPieces(solid.solid).map((piece) => movedPiece(piece, frame));
    }
  }
};

const meshPiece = ({ positions }: Mesh): ConvexPiece =>
  convexPiece(pointsOf(Float64Array.from(positions)), UNKNOWN);

const pointsOf = (corners: Float64Array): readonly Vector[] =>
  Array.from({ length: corners.length / 3 }, (_, index) =>
    vector(corners[3 * index]!, corners[3 * index + 1]!, corners[3 * index + 2]!),
  );

/** A turned piece has lost the axis along which its openings are seen. */
const movedPiece = ({ corners, filling }: ConvexPiece, frame: Frame): ConvexPiece =>
  convexPiece(
    pointsOf(corners).map((corner) => pointOut(frame, corner)),
    filling.kind === "solid" ? filling : UNKNOWN,
  );

const revolvedCorners = ({ at, profile }: RevolvedSolid): readonly Vector[] => {
  const outline = outlineCorners(profile);
  const outermost = Math.max(...outline.map(({ x }) => x));
  const ways = outlineCorners(circle(point(0, 0), outermost));
  return ways.flatMap((way) =>
    outline.map(({ x, y }) =>
      vector(at.x + (x * way.x) / outermost, at.y + (x * way.y) / outermost, y),
    ),
  );
};

const loftedCorners = ({ sections }: LoftedSolid): readonly Vector[] =>
  sections.flatMap(({ outline, height }) =>
    outlineCorners(outline).map(({ x, y }) => vector(x, y, height)),
  );
