// Reliefs at the corners where a part comes to rest against a piece: a half circle on the corner's own chord.

import { expect, test } from "vitest";
import { loop, vertex } from "../../src/geometry/contour.ts";
import { dogbonedOutline } from "../../src/geometry/corners.ts";
import { contourArea } from "../../src/geometry/measure.ts";

/** A piece of 40 x 20 with a tab of 10 x 12 on it: two corners at the tab's root. */
const TABBED = loop([
  vertex(0, 0),
  vertex(40, 0),
  vertex(40, 20),
  vertex(25, 20),
  vertex(25, 32),
  vertex(15, 32),
  vertex(15, 20),
  vertex(0, 20),
]);

test("takes (π / 2 - 1) r² of wood at each square root of a tab, and nothing elsewhere", () => {
  const radius = 1.5875;
  const relieved = dogbonedOutline(TABBED, radius);
  // A half circle of radius r on a chord of 2 r, less the triangle r² that lies outside the piece already (closed form).
  expect(contourArea(TABBED) - contourArea(relieved)).toBeCloseTo(
    2 * (Math.PI / 2 - 1) * radius ** 2,
    9,
  );
  expect(relieved.vertices.filter(({ bulge }) => bulge !== 0)).toHaveLength(2);
});

test("leaves an outline alone where no tool is round", () => {
  expect(dogbonedOutline(TABBED, 0)).toEqual(TABBED);
});
