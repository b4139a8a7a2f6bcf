// An edge as pieces of arc, halved until each is short enough for its format: takes a vertex with its bulge and the
// edge's end, gives the pieces in order. Halving needs no angles: the bulge of half an arc is b / (1 + sqrt(1 + b²)).

import { type Point, point, type Vertex, vertex } from "../geometry/contour.ts";

/** One piece: from a vertex with the piece's own bulge to its end. */
export interface ArcPiece {
  readonly from: Vertex;
  readonly to: Point;
}

export const arcPieces = (
  from: Vertex,
  to: Point,
  isShortEnough: (piece: ArcPiece) => boolean,
): readonly ArcPiece[] => {
  const piece: ArcPiece = { from, to };
  if (isShortEnough(piece)) return [piece];
  const half = from.bulge / (1 + Math.sqrt(1 + from.bulge * from.bulge));
  const middle = arcMiddle(piece);
  return [
    ...arcPieces(vertex(from.x, from.y, half), middle, isShortEnough),
    ...arcPieces(vertex(middle.x, middle.y, half), to, isShortEnough),
  ];
};

/** The bow stands on the right of its chord where it turns counter-clockwise. */
const arcMiddle = ({ from, to }: ArcPiece): Point =>
  point(
    (from.x + to.x + from.bulge * (to.y - from.y)) / 2,
    (from.y + to.y - from.bulge * (to.x - from.x)) / 2,
  );
