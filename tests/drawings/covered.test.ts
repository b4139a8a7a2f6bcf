// What is painted over wholly is left out; what may be seen never is.

import { expect, test } from "vitest";
import { isCovered } from "../../src/drawings/covered.ts";
import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { polygon, rectangle } from "../../src/geometry/shapes.ts";

const cover = { outline: rectangle(extent(0, 0, 100, 50)), holes: [] };

test.each([
  ["within", rectangle(extent(10, 10, 90, 40)), true],
  ["edge on edge", rectangle(extent(0, 0, 100, 50)), true],
  ["a tenth beyond", rectangle(extent(10, 10, 100.1, 40)), false],
  ["a circle within", circle(point(50, 25), 25), true],
  ["a circle beyond", circle(point(50, 25), 25.1), false],
])("%s: %s", (_, outline, expected) => {
  expect(isCovered(outline, [cover])).toBe(expected);
});

test("covers with a hole, a hollow or a round edge are no covers", () => {
  const small = rectangle(extent(10, 10, 12, 12));
  const hollow = polygon([point(0, 0), point(100, 0), point(100, 50), point(50, 20), point(0, 50)]);
  for (const outline of [hollow, circle(point(20, 20), 50)])
    expect(isCovered(small, [{ outline, holes: [] }])).toBe(false);
  expect(isCovered(small, [{ ...cover, holes: [circle(point(11, 11), 5)] }])).toBe(false);
});

test("two covers that only together hide it hide nothing here", () => {
  const right = { outline: rectangle(extent(100, 0, 200, 50)), holes: [] };
  expect(isCovered(rectangle(extent(90, 10, 110, 40)), [cover, right])).toBe(false);
});
