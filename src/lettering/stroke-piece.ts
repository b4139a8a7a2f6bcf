// A piece of a single-line glyph: one line or curve between two points, in font units.

import type { FontPoint, OutlineCurve } from "./outline-font.ts";

/** SVG fonts of this kind are drawn with lines and cubic curves only. */
export type StrokeCurve = Exclude<OutlineCurve, { readonly kind: "quadratic" }>;

export interface StrokePiece {
  readonly from: FontPoint;
  readonly curve: StrokeCurve;
}

export const pieceEnds = ({ from, curve }: StrokePiece): readonly [FontPoint, FontPoint] => [
  from,
  curve.to,
];

export const reversedPiece = ({ from, curve }: StrokePiece): StrokePiece => ({
  from: curve.to,
  curve: reversedCurve(curve, from),
});

/** Names a place: points that round to the same hundredth of a unit (some fonts add 1e-13 to theirs) are one. */
export const pointKey = ({ x, y }: FontPoint): string =>
  `${Math.round(x * 100)},${Math.round(y * 100)}`;

const reversedCurve = (curve: StrokeCurve, to: FontPoint): StrokeCurve =>
  curve.kind === "line"
    ? { kind: "line", to }
    : { kind: "cubic", first: curve.second, second: curve.first, to };
