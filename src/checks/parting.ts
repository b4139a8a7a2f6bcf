// How far two things must part along the axis that their centres lie apart on. Both numbers are distances from centre to
// centre, which is what a builder writes.

import { type Extent, extentCentre } from "../geometry/extent.ts";

export interface Parting {
  readonly axis: "across" | "along";
  /** From centre to centre along the axis, as it is. */
  readonly apart: number;
  /** As it must be, for the boxes to lie `clear` apart. */
  readonly needed: number;
}

export const partingOf = (a: Extent, b: Extent, clear = 0): Parting => {
  const [from, to] = [extentCentre(a), extentCentre(b)];
  const dx = Math.abs(to.x - from.x);
  const dy = Math.abs(to.y - from.y);
  const across = (a.maxX - a.minX + b.maxX - b.minX) / 2 + clear;
  const along = (a.maxY - a.minY + b.maxY - b.minY) / 2 + clear;
  return dx >= dy
    ? { axis: "across", apart: dx, needed: across }
    : { axis: "along", apart: dy, needed: along };
};
