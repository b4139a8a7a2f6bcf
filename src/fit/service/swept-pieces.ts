// Convex pieces on their way out of a console: swept along a straight line, which leaves them convex, and asked whether they
// reach deeper into one another than a touch. A piece is never smaller than what it stands for; material parts never larger.

import type { Frame } from "../../geometry/space/frame.ts";
import { boxGap, boxOut } from "../../geometry/space/space-box.ts";
import { plus, type Vector, vector } from "../../geometry/space/vector.ts";
import { type ConvexPiece, convexPiece, shrunkPiece } from "../convex/convex-piece.ts";
import { isConvex } from "../convex/convex-polygons.ts";
import { nearestPoints } from "../convex/nearest-points.ts";
import { outlineCorners } from "../convex/outline-corners.ts";
import { wayTouch } from "../fit-tolerance.ts";

/** The hull of the piece where it is and where it goes. */
export const sweptPiece = ({ corners, filling }: ConvexPiece, by: Vector): ConvexPiece => {
  const points = pointsOf(corners);
  return convexPiece([...points, ...points.map((corner) => plus(corner, by))], filling);
};

/** Deeper than a touch. `frame`: of the second, seen from the first. */
export const doMeet = (first: ConvexPiece, second: ConvexPiece, frame: Frame): boolean =>
  boxGap(first.box, boxOut(frame, second.box)) <= 0 &&
  nearestPoints(core(first), core(second), { frame, within: 0 }).kind === "meet";

const CORES = new WeakMap<ConvexPiece, ConvexPiece>();

const core = (piece: ConvexPiece): ConvexPiece => {
  const known = CORES.get(piece) ?? shrunkPiece(piece, wayTouch / 2);
  CORES.set(piece, known);
  return known;
};

/** What of a piece is material for certain: all of a solid one, of a convex sheet with openings the walls round it. */
export const materialOf = (piece: ConvexPiece): readonly ConvexPiece[] => {
  const known = MATERIAL.get(piece);
  if (known !== undefined) return known;
  const made = certainParts(piece);
  MATERIAL.set(piece, made);
  return made;
};

const MATERIAL = new WeakMap<ConvexPiece, readonly ConvexPiece[]>();

const certainParts = (piece: ConvexPiece): readonly ConvexPiece[] => {
  const { filling, corners } = piece;
  switch (filling.kind) {
    case "solid":
      return [piece];
    case "unknown":
      return [];
    case "outline":
      return isConvex(outlineCorners(filling.outline)) ? wallsOf(pointsOf(corners)) : [];
  }
};

/** A prism's corners come in pairs, lower and upper, round its outline. */
const wallsOf = (points: readonly Vector[]): readonly ConvexPiece[] =>
  Array.from({ length: points.length / 2 }, (_, index) =>
    convexPiece(
      [0, 1, 2, 3].map((corner) => points[(2 * index + corner) % points.length]!),
      { kind: "solid" },
    ),
  );

const pointsOf = (corners: Float64Array): readonly Vector[] =>
  Array.from({ length: corners.length / 3 }, (_, index) =>
    vector(corners[3 * index]!, corners[3 * index + 1]!, corners[3 * index + 2]!),
  );
