// Upright walls between two polygons, cut off by a sloping plane: as lofts that touch, one for each stretch of wall between
// two lines across the footprint. On the console: x right, y away from the operator, z up.

import type { Loop } from "../../geometry/contour.ts";
import { edgesOf } from "../../geometry/edges.ts";
import { extent } from "../../geometry/extent.ts";
import { mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { lofted, placed, type Solid } from "../../geometry/solid/solid.ts";
import { samePlace } from "../../geometry/tolerance.ts";

export interface SlopedWalls {
  /** Straight-edged loops; the inner one lies inside the outer one. */
  readonly outer: Loop;
  readonly inner: Loop;
  readonly foot: number;
  /** Height of the plane at a y. */
  readonly topAt: (y: number) => number;
}

export const slopedWalls = ({ outer, inner, foot, topAt }: SlopedWalls): readonly Solid[] => {
  const sides = [...sidesOf(outer, "outer"), ...sidesOf(inner, "inner")];
  const levels = distinctLevels([...outer.vertices, ...inner.vertices].map(({ y }) => y));
  return levels.slice(1).flatMap((far, index) => {
    const near = levels[index]!;
    return piecesBetween(sides, near, far).map(({ left, right }) =>
      placed(
        lofted([
          sectionAt(left, right, { y: far, foot, top: topAt(far) }),
          sectionAt(left, right, { y: near, foot, top: topAt(near) }),
        ]),
        { x: 0, y: 0, z: 0 },
        // The loft runs along its own z from -far to -near: a quarter turn about x lays it along -y.
        { x: 90 },
      ),
    );
  });
};

interface Side {
  readonly of: "outer" | "inner";
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
}

/** Sides that run across lie in a level and bound no piece. */
const sidesOf = (shape: Loop, of: Side["of"]): readonly Side[] =>
  edgesOf(shape)
    .filter(({ from, to }) => Math.abs(from.y - to.y) > samePlace)
    .map(({ from, to }) => (from.y < to.y ? { of, from, to } : { of, from: to, to: from }));

const distinctLevels = (values: readonly number[]): readonly number[] =>
  values
    .toSorted((a, b) => a - b)
    .filter((value, index, sorted) => index === 0 || value - sorted[index - 1]! > samePlace);

/** Where the sides are crossed half way up, from left to right: inside the outer loop and outside the inner one is wall. */
const piecesBetween = (
  sides: readonly Side[],
  near: number,
  far: number,
): readonly { readonly left: Side; readonly right: Side }[] => {
  const middle = (near + far) / 2;
  const crossed = sides
    .filter(({ from, to }) => from.y < middle && to.y > middle)
    .toSorted((a, b) => xAt(a, middle) - xAt(b, middle));
  let inOuter = false;
  let inInner = false;
  return crossed.slice(0, -1).flatMap((left, index) => {
    if (left.of === "outer") inOuter = !inOuter;
    else inInner = !inInner;
    const right = crossed[index + 1]!;
    return inOuter && !inInner ? [{ left, right }] : [];
  });
};

const xAt = ({ from, to }: Side, y: number): number => {
  if (Math.abs(y - from.y) <= samePlace) return from.x;
  if (Math.abs(y - to.y) <= samePlace) return to.x;
  return from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y);
};

const sectionAt = (
  left: Side,
  right: Side,
  at: { readonly y: number; readonly foot: number; readonly top: number },
): Parameters<typeof lofted>[0][number] => ({
  height: mm(-at.y),
  outline: rectangle(extent(xAt(left, at.y), at.foot, xAt(right, at.y), at.top)),
  holes: [],
});
