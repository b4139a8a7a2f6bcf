// How far two things must part along the axis that their centres lie apart on. Both numbers are distances from centre to
// centre, which is what a builder writes.

import type { Contour } from "../geometry/contour.ts";
import { type Extent, extentCentre } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { pointDistance } from "../geometry/point.ts";
import { samePlace } from "../geometry/tolerance.ts";

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

export interface ContourParting extends Pick<Parting, "apart" | "needed"> {
  /** `sideways`, `up and down`: where the two numbers are not the way from centre to centre itself; else empty. */
  readonly way: "" | " sideways" | " up and down";
}

/** Of two circles from centre to centre, whichever way they lie; of other outlines as their boxes have it. */
export const contourParting = (a: Contour, b: Contour, clear = 0): ContourParting => {
  if (a.kind === "circle" && b.kind === "circle")
    return {
      apart: pointDistance(a.centre, b.centre),
      needed: a.radius + b.radius + clear,
      way: "",
    };
  const boxes = [contourExtent(a), contourExtent(b)] as const;
  const { axis, ...numbers } = partingOf(...boxes, clear);
  const [from, to] = [extentCentre(boxes[0]), extentCentre(boxes[1])];
  const aside = axis === "across" ? to.y - from.y : to.x - from.x;
  const way = axis === "across" ? " sideways" : " up and down";
  return { ...numbers, way: Math.abs(aside) <= samePlace ? "" : way };
};
