// Pieces of a single-line glyph joined into few long strokes, each stretch of line drawn once.
// Fonts of this kind go back over a line to get from one to the next: on a laser that burns twice as deep.

import type { FontPoint } from "./outline-font.ts";
import { singlePieces } from "./single-pieces.ts";
import {
  pieceEnds,
  pointKey,
  reversedPiece,
  type StrokeCurve,
  type StrokePiece,
} from "./stroke-piece.ts";

/** Pieces in drawing order; each starts where the one before it ends. */
export type JoinedStroke = readonly StrokePiece[];

/**
 * Strokes start where an odd number of pieces meet, in the order that the font draws them, then at whatever is left
 * (closed rounds). Where several pieces go on, the stroke takes the straightest.
 */
export const joinedStrokes = (pieces: readonly StrokePiece[]): readonly JoinedStroke[] => {
  const single = singlePieces(pieces);
  const undrawn = new Set(single);
  const meeting = piecesByPoint(single);
  const strokes: JoinedStroke[] = [];
  const drawFrom = (start: FontPoint): void => {
    const stroke = drawnStroke(start, meeting, undrawn);
    if (stroke.length > 0) strokes.push(stroke);
  };
  for (const piece of single)
    for (const end of pieceEnds(piece))
      if ((meeting.get(pointKey(end))?.length ?? 0) % 2 === 1) drawFrom(end);
  for (const piece of single) drawFrom(piece.from);
  return strokes;
};

/** Draws on from a point, piece by piece, until nothing undrawn starts where it stands. */
const drawnStroke = (
  start: FontPoint,
  meeting: ReadonlyMap<string, readonly StrokePiece[]>,
  undrawn: Set<StrokePiece>,
): JoinedStroke => {
  const stroke: StrokePiece[] = [];
  let here = start;
  for (;;) {
    const open = (meeting.get(pointKey(here)) ?? []).filter((piece) => undrawn.has(piece));
    const next = straightest(open, here, stroke.at(-1));
    if (next === null) return stroke;
    undrawn.delete(next);
    const directed = leadingFrom(next, here);
    stroke.push(directed);
    here = directed.curve.to;
  }
};

/** The piece that turns least from the last one; the first where there is no last. */
const straightest = (
  open: readonly StrokePiece[],
  here: FontPoint,
  last: StrokePiece | undefined,
): StrokePiece | null => {
  let best: StrokePiece | null = null;
  let bestStraightness = Number.NEGATIVE_INFINITY;
  for (const piece of open) {
    const ahead = last === undefined ? 0 : straightness(last, leadingFrom(piece, here));
    if (ahead <= bestStraightness) continue;
    best = piece;
    bestStraightness = ahead;
  }
  return best;
};

/** Cosine of the turn between two pieces that follow one another. */
const straightness = (before: StrokePiece, after: StrokePiece): number => {
  const arriving = vectorBetween(lastPointBefore(before), before.curve.to);
  const leaving = vectorBetween(after.from, firstPointAfter(after.curve));
  const size = arriving.length * leaving.length;
  return size === 0 ? 0 : (arriving.x * leaving.x + arriving.y * leaving.y) / size;
};

const vectorBetween = (from: FontPoint, to: FontPoint) => {
  const x = to.x - from.x;
  const y = to.y - from.y;
  return { x, y, length: Math.sqrt(x * x + y * y) };
};

const lastPointBefore = ({ from, curve }: StrokePiece): FontPoint =>
  curve.kind === "line" ? from : curve.second;

const firstPointAfter = (curve: StrokeCurve): FontPoint =>
  curve.kind === "line" ? curve.to : curve.first;

const leadingFrom = (piece: StrokePiece, here: FontPoint): StrokePiece =>
  pointKey(piece.from) === pointKey(here) ? piece : reversedPiece(piece);

const piecesByPoint = (
  pieces: readonly StrokePiece[],
): ReadonlyMap<string, readonly StrokePiece[]> => {
  const meeting = new Map<string, StrokePiece[]>();
  for (const piece of pieces)
    for (const end of pieceEnds(piece)) {
      const key = pointKey(end);
      const list = meeting.get(key);
      if (list === undefined) meeting.set(key, [piece]);
      else list.push(piece);
    }
  return meeting;
};
