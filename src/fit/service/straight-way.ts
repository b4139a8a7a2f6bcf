// What a body meets of another when it is pulled straight out, by convex pieces: each piece of it swept along the way is
// convex again, so that the answer is exact where both pieces are material. A piece is never smaller than what it stands for.

import { directionIn } from "../../geometry/space/frame.ts";
import { scaled, type Vector } from "../../geometry/space/vector.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { ConvexPiece } from "../convex/convex-piece.ts";
import { shapePieces } from "../convex/recipe-pieces.ts";
import { frameSeenFrom } from "../hull-relation.ts";
import { doMeet, materialOf, sweptPiece } from "./swept-pieces.ts";

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
