// What a body meets of another when it is pulled straight out, by convex pieces: each piece of it swept along the way is
// convex again, so that the answer is exact where both pieces are material. A piece is never smaller than what it stands for.

import { directionIn, type Frame } from "../../geometry/space/frame.ts";
import { boxGap, boxOut } from "../../geometry/space/space-box.ts";
import { plus, scaled, type Vector, vector } from "../../geometry/space/vector.ts";
import type { ConsoleBody } from "../console-body.ts";
import { type ConvexPiece, convexPiece, shrunkPiece } from "../convex/convex-piece.ts";
import { isConvex } from "../convex/convex-polygons.ts";
import { nearestPoints } from "../convex/nearest-points.ts";
import { outlineCorners } from "../convex/outline-corners.ts";
import { shapePieces } from "../convex/recipe-pieces.ts";
import { wayTouch } from "../fit-tolerance.ts";
import { frameSeenFrom } from "../hull-relation.ts";

export interface StraightWay {
  /** Of unit length, in the console. */
  readonly along: Vector;
  readonly travel: number;
}

/**
 * Of one panel: what it carries is swept once, however much is in its way. `isApart`: some of their boxes lie one before the
 * other, and pieces that meet, hollow or not, bar the way. Else their boxes overlap from the beginning, and only material of
 * both tells: what is apart before anything moves and meets on the way.
 */
export const barsWay = (
  way: StraightWay,
): ((moving: ConsoleBody, still: ConsoleBody, isApart: boolean) => boolean) => {
  // By body: bodies of one recipe share its pieces, and lie each in a frame of its own.
  const bodies = new Map<ConsoleBody, Map<ConvexPiece, ConvexPiece>>();
  return (moving, still, isApart) => {
    const frame = frameSeenFrom(moving.frame, still.frame);
    const by = scaled(directionIn(moving.frame, way.along), way.travel);
    const known = bodies.get(moving) ?? new Map<ConvexPiece, ConvexPiece>();
    bodies.set(moving, known);
    const swept = (piece: ConvexPiece): ConvexPiece => {
      const made = known.get(piece) ?? sweptPiece(piece, by);
      known.set(piece, made);
      return made;
    };
    const meets = (first: ConvexPiece, second: ConvexPiece): boolean =>
      doMeet(first, second, frame);
    const [own, others] = [shapePieces(moving.shape), shapePieces(still.shape)];
    if (isApart) return own.some((piece) => others.some((other) => meets(swept(piece), other)));
    const fixed = others.flatMap(materialOf);
    if (fixed.length === 0) return false;
    return own
      .flatMap(materialOf)
      .some((part) => fixed.some((other) => meets(swept(part), other) && !meets(part, other)));
  };
};

/** What of a piece is material for certain: all of a solid one, of a convex sheet with openings the walls round it. */
const materialOf = (piece: ConvexPiece): readonly ConvexPiece[] => {
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

/** Deeper than a touch. */
const doMeet = (first: ConvexPiece, second: ConvexPiece, frame: Frame): boolean =>
  boxGap(first.box, boxOut(frame, second.box)) <= 0 &&
  nearestPoints(core(first), core(second), { frame, within: 0 }).kind === "meet";

const core = (piece: ConvexPiece): ConvexPiece => shrunkPiece(piece, wayTouch / 2);

/** The hull of the piece where it is and where it goes. */
const sweptPiece = ({ corners, filling }: ConvexPiece, by: Vector): ConvexPiece => {
  const points = pointsOf(corners);
  return convexPiece([...points, ...points.map((corner) => plus(corner, by))], filling);
};

const pointsOf = (corners: Float64Array): readonly Vector[] =>
  Array.from({ length: corners.length / 3 }, (_, index) =>
    vector(corners[3 * index]!, corners[3 * index + 1]!, corners[3 * index + 2]!),
  );
