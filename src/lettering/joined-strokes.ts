// Pieces of a single-line glyph joined into as few long strokes as they make, each piece drawn once.
// Fonts of this kind go over some lines twice to get from one to the next: on a laser that burns twice as deep.

import type { FontPoint, OutlineCurve } from "./outline-font.ts";
import type { StrokePiece } from "./svg-font.ts";

/** Pieces in drawing order; each starts where the one before it ends. */
export type JoinedStroke = readonly StrokePiece[];

/**
 * Strokes start where an odd number of pieces meet, in the order that the font draws them, then at whatever is left
 * (closed rounds). At a crossing the stroke takes the first piece that is not drawn yet.
 */
export const joinedStrokes = (pieces: readonly StrokePiece[]): readonly JoinedStroke[] => {
  const single = withoutRepeats(pieces);
  const undrawn = new Set(single);
  const meeting = piecesByPoint(single);
  const strokes: JoinedStroke[] = [];
  const drawFrom = (start: FontPoint): void => {
    const stroke = drawnStroke(start, meeting, undrawn);
    if (stroke.length > 0) strokes.push(stroke);
  };
  for (const piece of single)
    for (const end of [piece.from, piece.curve.to])
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
    const next = meeting.get(pointKey(here))?.find((piece) => undrawn.has(piece));
    if (next === undefined) return stroke;
    undrawn.delete(next);
    const directed = pointKey(next.from) === pointKey(here) ? next : reversedPiece(next);
    stroke.push(directed);
    here = directed.curve.to;
  }
};

const withoutRepeats = (pieces: readonly StrokePiece[]): readonly StrokePiece[] => {
  const seen = new Set<string>();
  return pieces.filter((piece) => {
    const forward = pieceKey(piece);
    const isNew = !seen.has(forward);
    seen.add(forward);
    seen.add(pieceKey(reversedPiece(piece)));
    return isNew;
  });
};

const piecesByPoint = (
  pieces: readonly StrokePiece[],
): ReadonlyMap<string, readonly StrokePiece[]> => {
  const meeting = new Map<string, StrokePiece[]>();
  for (const piece of pieces)
    for (const end of [piece.from, piece.curve.to]) {
      const key = pointKey(end);
      const list = meeting.get(key);
      if (list === undefined) meeting.set(key, [piece]);
      else list.push(piece);
    }
  return meeting;
};

const reversedPiece = ({ from, curve }: StrokePiece): StrokePiece => ({
  from: curve.to,
  curve: reversedCurve(curve, from),
});

const reversedCurve = (curve: OutlineCurve, to: FontPoint): OutlineCurve => {
  switch (curve.kind) {
    case "line":
      return { kind: "line", to };
    case "quadratic":
      return { kind: "quadratic", control: curve.control, to };
    case "cubic":
      return { kind: "cubic", first: curve.second, second: curve.first, to };
  }
};

/** Font units are a few hundred; a hundredth of one is a thousandth of a stroke's width as cut. */
const pointKey = ({ x, y }: FontPoint): string => `${Math.round(x * 100)},${Math.round(y * 100)}`;

const pieceKey = ({ from, curve }: StrokePiece): string => {
  const ends = `${pointKey(from)} ${pointKey(curve.to)}`;
  switch (curve.kind) {
    case "line":
      return ends;
    case "quadratic":
      return `${ends} ${pointKey(curve.control)}`;
    case "cubic":
      return `${ends} ${pointKey(curve.first)} ${pointKey(curve.second)}`;
  }
};
