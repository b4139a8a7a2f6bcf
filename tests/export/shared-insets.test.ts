// Insets that are shared between shifted copies against the same insets worked out one by one.

import { expect, test } from "vitest";
import { freshInset, sharedInsets } from "../../src/export/shared-insets.ts";
import type { Contour, Region } from "../../src/geometry/contour.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { placedRegion, placement } from "../../src/geometry/transform.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { faceNamed } from "../lettering/faces.ts";

const contoursOf = (regions: readonly Region[]): readonly Contour[] =>
  regions.flatMap(({ outline, holes }) => [outline, ...holes]);

/** Largest difference of any coordinate or bulge; infinite where the shapes are not alike. */
const difference = (a: readonly Region[], b: readonly Region[]): number => {
  const numbers = (regions: readonly Region[]): readonly number[] =>
    contoursOf(regions).flatMap((contour) =>
      contour.kind === "circle"
        ? [contour.centre.x, contour.centre.y, contour.radius]
        : contour.vertices.flatMap(({ x, y, bulge }) => [x, y, bulge]),
    );
  const [first, second] = [numbers(a), numbers(b)];
  if (first.length !== second.length) return Number.POSITIVE_INFINITY;
  return Math.max(...first.map((value, index) => Math.abs(value - (second[index] ?? Number.NaN))));
};

test("letters of a legend, again and again, at two sizes", () => {
  const inset = sharedInsets();
  for (const capHeight of [3.5, 4]) {
    const { fills } = setText(faceNamed("b612"), "PUMP 8 PUMP 8 OBI", {
      capHeight: mm(capHeight),
      align: "start",
    });
    for (const [index, fill] of fills.entries()) {
      const region = placedRegion(fill, placement(13.37 * index, 100 - index));
      expect(difference(inset(region, 0.075), freshInset(region, 0.075))).toBeLessThan(1e-6);
    }
  }
});

test("another distance and another shape are not taken for a known one", () => {
  const inset = sharedInsets();
  const [letter, other] = setText(faceNamed("b612"), "PR", {
    capHeight: mm(4),
    align: "start",
  }).fills;
  if (letter === undefined || other === undefined) throw new Error("two letters");
  inset(letter, 0.075);
  expect(difference(inset(letter, 0.1), freshInset(letter, 0.1))).toBe(0);
  expect(difference(inset(other, 0.075), freshInset(other, 0.075))).toBe(0);
});
