// Of two shapes the convex pieces that lie nearest to one another, nearest boxes first. A drag asks this some hundred times
// a step: boxes seen from the first shape are numbers that the next search writes over, and no list is made of them.

import { boxGap, boxOut, gapToBoxAt, putBoxOut } from "../../geometry/space/space-box.ts";
import type { Vector } from "../../geometry/space/vector.ts";
import { shapeExtent } from "../body-groups.ts";
import type { BodyShape } from "../console-body.ts";
import { touchDepth } from "../fit-tolerance.ts";
import { type ConvexPiece, shrunkPiece } from "./convex-piece.ts";
import { hollowRelation } from "./hollows.ts";
import { type Nearest, type NearestSearch, nearestPoints } from "./nearest-points.ts";
import { shapePieces } from "./recipe-pieces.ts";

export interface PiecePair {
  readonly first: ConvexPiece;
  readonly second: ConvexPiece;
}

export type NearestPieces =
  /** They reach deeper into one another than a touch. */
  | { readonly kind: "meet"; readonly pair: PiecePair }
  /** Both places in the frame of the first shape; no gap where they reach into one another no deeper than a touch. */
  | {
      readonly kind: "apart";
      readonly pair: PiecePair;
      readonly gap: number;
      readonly onFirst: Vector;
      readonly onSecond: Vector;
    };

export interface PieceSearch extends NearestSearch {
  /** `open`: what stands whole in a hollow of a piece does not meet it. */
  readonly hollows: "filled" | "open";
}

/** `frame`: of the second shape, seen from the first. null: all are farther apart than `within`. */
export const nearestPieces = (
  a: BodyShape,
  b: BodyShape,
  { frame, within, hollows }: PieceSearch,
): NearestPieces | null => {
  let nearest: (NearestPieces & { readonly kind: "apart" }) | null = null;
  for (const pair of piecePairs(a, b, { frame, within })) {
    const least: number = nearest?.gap ?? within;
    if (pair.boxGap > least) break;
    const found = piecesRelation(pair, { frame, within: least, hollows });
    if (found.kind === "beyond") continue;
    if (found.kind === "meet") return { kind: "meet", pair };
    if (nearest === null ? found.gap <= within : found.gap < nearest.gap)
      nearest = { ...found, pair };
  }
  return nearest;
};

interface BoxedPair extends PiecePair {
  readonly boxGap: number;
}

const piecePairs = (
  a: BodyShape,
  b: BodyShape,
  { frame, within }: NearestSearch,
): readonly BoxedPair[] => {
  const [firsts, seconds] = [shapePieces(a), shapePieces(b)];
  if (BOXES.length < 6 * seconds.length) BOXES = new Float64Array(12 * seconds.length);
  for (let index = 0; index < seconds.length; index += 1)
    putBoxOut(frame, seconds[index]!.box, { into: BOXES, at: 6 * index });
  const round = firsts.length > 1 ? boxOut(frame, shapeExtent(b)) : null;
  const pairs: BoxedPair[] = [];
  for (const first of firsts) {
    if (round !== null && boxGap(first.box, round) > within) continue;
    for (let index = 0; index < seconds.length; index += 1) {
      const gap = gapToBoxAt(first.box, BOXES, 6 * index);
      if (gap <= within) pairs.push({ first, second: seconds[index]!, boxGap: gap });
    }
  }
  return pairs.length < 2 ? pairs : pairs.sort((one, other) => one.boxGap - other.boxGap);
};

/**
 * Of the second shape's pieces, six numbers each; larger when one with more of them comes. Shared by all calls: it is filled and
 * read within one run of `piecePairs`, which calls nothing that could come back to it, and the pairs that it gives hold numbers of
 * their own. With boxes made anew at each call, and lists in between, a step of a drag took 13.0 ms of processor, and 6.6 since.
 */
let BOXES = new Float64Array(6 * 64);

/** Pieces that meet, but no deeper than a touch, lie 0 apart where their shrunk selves are nearest. */
const piecesRelation = ({ first, second }: PiecePair, search: PieceSearch): Nearest => {
  const found = nearestPoints(first, second, search);
  if (found.kind !== "meet") return found;
  const cores = nearestPoints(core(first), core(second), { ...search, within: Infinity });
  if (cores.kind === "apart") return { ...cores, gap: 0 };
  return search.hollows === "open" ? hollowRelation(first, second, search) : cores;
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
