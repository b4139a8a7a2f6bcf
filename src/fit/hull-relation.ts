// How two bodies lie to one another, by their convex pieces: the grade for a drag, and what a full verdict asks first. Pieces
// hold all of a body, so that a gap is never larger than the true one; whether it is the true one is said beside it.

import { containsPoint } from "../geometry/containment.ts";
import { point } from "../geometry/contour.ts";
import { pointToContour } from "../geometry/distance.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { directionIn, type Frame, pointIn, pointOut } from "../geometry/space/frame.ts";
import { boxGap, boxOut } from "../geometry/space/space-box.ts";
import { plus, scaled, type Vector } from "../geometry/space/vector.ts";
import { shapeExtent } from "./body-groups.ts";
import type { ConsoleBody } from "./console-body.ts";
import { type ConvexPiece, shrunkPiece } from "./convex/convex-piece.ts";
import { type Nearest, type NearestSearch, nearestPoints } from "./convex/nearest-points.ts";
import { shapePieces } from "./convex/recipe-pieces.ts";
import { onOutline, touchDepth } from "./fit-tolerance.ts";

export type HullRelation =
  /** Pieces reach deeper into one another than a touch. `isExact`: so do the bodies. */
  | { readonly kind: "meet"; readonly isExact: boolean }
  /** No farther apart, and no deeper in, than a touch. */
  | { readonly kind: "touching"; readonly at: Vector; readonly isExact: boolean }
  /** `at`, in the console: the middle of the shortest line between them. */
  | { readonly kind: "apart"; readonly gap: Mm; readonly at: Vector; readonly isExact: boolean };

/** null: farther apart than `within`. */
export const hullRelation = (
  a: ConsoleBody,
  b: ConsoleBody,
  within: number,
): HullRelation | null => {
  const frame = frameSeenFrom(a.frame, b.frame);
  let nearest: Near | null = null;
  for (const pair of piecePairs(a, b, { frame, within })) {
    const least = nearest?.gap ?? within;
    if (pair.boxGap > least) break;
    const found = piecesRelation(pair, { frame, within: least });
    if (found.kind === "beyond") continue;
    if (found.kind === "meet") return { kind: "meet", isExact: isSolid(pair) };
    if (nearest === null ? found.gap <= within : found.gap < nearest.gap)
      nearest = { ...found, ...pair };
  }
  if (nearest === null) return null;
  const isExact = isOfMaterial(nearest, frame);
  const at = pointOut(a.frame, scaled(plus(nearest.onFirst, nearest.onSecond), 1 / 2));
  return nearest.gap <= touchDepth
    ? { kind: "touching", at, isExact }
    : { kind: "apart", gap: mm(nearest.gap), at, isExact };
};

/** A frame as one sees it from within another. */
export const frameSeenFrom = (from: Frame, frame: Frame): Frame => ({
  x: directionIn(from, frame.x),
  y: directionIn(from, frame.y),
  z: directionIn(from, frame.z),
  origin: pointIn(from, frame.origin),
});

interface PiecePair {
  readonly first: ConvexPiece;
  readonly second: ConvexPiece;
  readonly boxGap: number;
}

interface Near extends PiecePair {
  readonly gap: number;
  readonly onFirst: Vector;
  readonly onSecond: Vector;
}

/** Nearest boxes first. */
const piecePairs = (
  a: ConsoleBody,
  b: ConsoleBody,
  { frame, within }: NearestSearch,
): readonly PiecePair[] => {
  const round = boxOut(frame, shapeExtent(b.shape));
  const extent = shapeExtent(a.shape);
  const seconds = shapePieces(b.shape)
    .map((second) => ({ second, box: boxOut(frame, second.box) }))
    .filter(({ box }) => boxGap(box, extent) <= within);
  const pairs: PiecePair[] = [];
  for (const first of shapePieces(a.shape)) {
    if (boxGap(first.box, round) > within) continue;
    for (const { second, box } of seconds) {
      const gap = boxGap(first.box, box);
      if (gap <= within) pairs.push({ first, second, boxGap: gap });
    }
  }
  return pairs.sort((one, other) => one.boxGap - other.boxGap);
};

/** Pieces that meet, but no deeper than a touch, lie 0 apart where their shrunk selves are nearest. */
const piecesRelation = ({ first, second }: PiecePair, search: NearestSearch): Nearest => {
  const found = nearestPoints(first, second, search);
  if (found.kind !== "meet") return found;
  const cores = nearestPoints(core(first), core(second), { ...search, within: Infinity });
  return cores.kind === "apart" ? { ...cores, gap: 0 } : cores;
};

const CORES = new WeakMap<ConvexPiece, ConvexPiece>();

/** Half the depth of a touch off each. */
const core = (piece: ConvexPiece): ConvexPiece => {
  const known = CORES.get(piece);
  if (known !== undefined) return known;
  const made = shrunkPiece(piece, touchDepth / 2);
  CORES.set(piece, made);
  return made;
};

const isSolid = ({ first, second }: PiecePair): boolean =>
  first.filling.kind === "solid" && second.filling.kind === "solid";

/** Both ends of the shortest line are material: then it is the bodies' own. */
const isOfMaterial = ({ first, second, onFirst, onSecond }: Near, frame: Frame): boolean =>
  isMaterial(first, onFirst) && isMaterial(second, pointIn(frame, onSecond));

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
