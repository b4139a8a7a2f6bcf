// How two bodies lie to one another, by their convex pieces: the grade for a drag, and what a full verdict asks first. Pieces
// hold all of a body, so that a gap is never larger than the true one; whether it is the true one a verdict asks as well.

import { containsPoint } from "../geometry/containment.ts";
import { point } from "../geometry/contour.ts";
import { pointToContour } from "../geometry/distance.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { directionIn, type Frame, pointIn, pointOut } from "../geometry/space/frame.ts";
import { plus, scaled, type Vector } from "../geometry/space/vector.ts";
import type { ConsoleBody } from "./console-body.ts";
import type { ConvexPiece } from "./convex/convex-piece.ts";
import { type NearestPieces, nearestPieces, type PiecePair } from "./convex/nearest-pieces.ts";
import { onOutline, touchDepth } from "./fit-tolerance.ts";

export type PieceRelation =
  /** Pieces reach deeper into one another than a touch. */
  | { readonly kind: "meet" }
  /** No farther apart, and no deeper in, than a touch. */
  | { readonly kind: "touching"; readonly at: Vector }
  /** `at`, in the console: the middle of the shortest line between them. */
  | { readonly kind: "apart"; readonly gap: Mm; readonly at: Vector };

/** `isExact`: so do the bodies. */
export type HullRelation = PieceRelation & { readonly isExact: boolean };

/** null: farther apart than `within`. */
export const hullRelation = (
  a: ConsoleBody,
  b: ConsoleBody,
  within: number,
): HullRelation | null => {
  const frame = frameSeenFrom(a.frame, b.frame);
  const found = nearestPieces(a.shape, b.shape, { frame, within, hollows: "filled" });
  if (found === null) return null;
  const isExact = found.kind === "meet" ? isSolid(found.pair) : isOfMaterial(found, frame);
  return { ...relationOf(found, a.frame), isExact };
};

/** The same without a word about the bodies themselves, which is a seventh of the work; what stands in a hollow is looked at. */
export const pieceRelation = (
  a: ConsoleBody,
  b: ConsoleBody,
  within: number,
): PieceRelation | null => {
  const frame = frameSeenFrom(a.frame, b.frame);
  const found = nearestPieces(a.shape, b.shape, { frame, within, hollows: "open" });
  return found === null ? null : relationOf(found, a.frame);
};

const relationOf = (found: NearestPieces, frame: Frame): PieceRelation => {
  if (found.kind === "meet") return MEET;
  const at = pointOut(frame, scaled(plus(found.onFirst, found.onSecond), 1 / 2));
  return found.gap <= touchDepth
    ? { kind: "touching", at }
    : { kind: "apart", gap: mm(found.gap), at };
};

const MEET: PieceRelation = { kind: "meet" };

/** A frame as one sees it from within another. */
export const frameSeenFrom = (from: Frame, frame: Frame): Frame => ({
  x: directionIn(from, frame.x),
  y: directionIn(from, frame.y),
  z: directionIn(from, frame.z),
  origin: pointIn(from, frame.origin),
});

const isSolid = ({ first, second }: PiecePair): boolean =>
  first.filling.kind === "solid" && second.filling.kind === "solid";

/** Both ends of the shortest line are material: then it is the bodies' own. */
const isOfMaterial = (
  { pair, onFirst, onSecond }: NearestPieces & { readonly kind: "apart" },
  frame: Frame,
): boolean => isMaterial(pair.first, onFirst) && isMaterial(pair.second, pointIn(frame, onSecond));

const isMaterial = ({ filling }: ConvexPiece, at: Vector): boolean => {
  switch (filling.kind) {
    case "solid":
      return true;
    case "unknown":
      return false;
    case "outline": {
      const { outline, openings } = filling;
      const seen = point(at.x, at.y);
      const isInside =
        containsPoint(outline, seen) || pointToContour(seen, outline).gap <= onOutline;
      return isInside && !openings.some((contour) => containsPoint(contour, seen));
    }
  }
};
