// The pieces of a glyph with every stretch kept once: lines are parted wherever another piece ends on them, and what is
// then there twice is dropped.

import type { FontPoint } from "./outline-font.ts";
import { pieceEnds, pointKey, reversedPiece, type StrokePiece } from "./stroke-piece.ts";

/** Single-line fonts round their numbers to three digits, so a point meant to lie on a line may be half a unit off. */
const ON_LINE = 0.6;

export const singlePieces = (pieces: readonly StrokePiece[]): readonly StrokePiece[] => {
  const ends = distinctPoints(pieces.flatMap(pieceEnds));
  return withoutRepeats(pieces.flatMap((piece) => partedPiece(piece, ends)));
};

/** A line as the lines between the points that lie on it; a curve as it is. */
const partedPiece = (piece: StrokePiece, ends: readonly FontPoint[]): readonly StrokePiece[] => {
  const { from, curve } = piece;
  if (curve.kind !== "line") return [piece];
  const stops = ends
    .map((at) => ({ at, share: shareAlong(from, curve.to, at) }))
    .filter(({ share }) => share !== null && share > 0 && share < 1)
    .sort((a, b) => (a.share ?? 0) - (b.share ?? 0))
    .map(({ at }) => at);
  const points = [from, ...stops, curve.to];
  return points.slice(1).map((to, index) => ({
    from: points[index] ?? from,
    curve: { kind: "line", to },
  }));
};

/** How far along the line a point lies that is on it and not at its ends; null for any other. */
const shareAlong = (from: FontPoint, to: FontPoint, at: FontPoint): number | null => {
  const key = pointKey(at);
  if (key === pointKey(from) || key === pointKey(to)) return null;
  const alongX = to.x - from.x;
  const alongY = to.y - from.y;
  const square = alongX * alongX + alongY * alongY;
  const aside = alongX * (at.y - from.y) - alongY * (at.x - from.x);
  if (aside * aside > ON_LINE * ON_LINE * square) return null;
  return (alongX * (at.x - from.x) + alongY * (at.y - from.y)) / square;
};

const distinctPoints = (points: readonly FontPoint[]): readonly FontPoint[] => [
  ...new Map(points.map((at) => [pointKey(at), at])).values(),
];

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

const pieceKey = ({ from, curve }: StrokePiece): string => {
  const ends = `${pointKey(from)} ${pointKey(curve.to)}`;
  return curve.kind === "line"
    ? ends
    : `${ends} ${pointKey(curve.first)} ${pointKey(curve.second)}`;
};
