// Bulges of arcs, found from centre and ends without an angle: no sine, no rounding beyond a square root.

import type { Point } from "./contour.ts";

/** Bulge of the arc round `centre` from `from` to `to`, turning left or right; less than a whole turn. */
export const arcBulge = (centre: Point, from: Point, to: Point, turnsLeft: boolean): number => {
  const fromX = from.x - centre.x;
  const fromY = from.y - centre.y;
  const toX = to.x - centre.x;
  const toY = to.y - centre.y;
  const turn = turnsLeft ? 1 : -1;
  const diameter = Math.sqrt(fromX * fromX + fromY * fromY) + Math.sqrt(toX * toX + toY * toY);
  const chord = distance(toX - fromX, toY - fromY);
  const twiceToChord = distance(toX + fromX, toY + fromY);
  const isOverHalf = (fromX * toY - fromY * toX) * turn < 0;
  // tan(sweep / 4) = sin(sweep / 2) / (1 + cos(sweep / 2)), written so that neither form cancels.
  const size = isOverHalf ? (diameter + twiceToChord) / chord : chord / (diameter + twiceToChord);
  return size === 0 ? 0 : turn * size;
};

/** Bulge of the arc that leaves `from` in the direction (alongX, alongY) and ends at `to`. */
export const tangentBulge = (
  from: Point,
  to: Point,
  along: { readonly x: number; readonly y: number },
): number => {
  const chordX = to.x - from.x;
  const chordY = to.y - from.y;
  const side = along.x * chordY - along.y * chordX;
  const ahead = along.x * chordX + along.y * chordY;
  return side === 0 ? 0 : side / (distance(chordX, chordY) + ahead);
};

const distance = (dx: number, dy: number): number => Math.sqrt(dx * dx + dy * dy);
