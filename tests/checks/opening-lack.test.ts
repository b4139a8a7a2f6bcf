// What an opening lacks for a body that stands past its edge, by hand: never less than nothing, wherever the body stands.

import fc from "fast-check";
import { expect, test } from "vitest";
import { openingLack } from "../../src/checks/layout/opening-lack.ts";
import { containsContour } from "../../src/geometry/containment.ts";
import { type Contour, circle, loop, point, vertex } from "../../src/geometry/contour.ts";

const rectangle = (width: number, height: number, x = 0): Contour =>
  loop([
    vertex(x - width / 2, -height / 2),
    vertex(x + width / 2, -height / 2),
    vertex(x + width / 2, height / 2),
    vertex(x - width / 2, height / 2),
  ]);

const at = (x: number, diameter: number): Contour => circle(point(x, 0), diameter / 2);

test.each([
  ["a washer in a round hole", at(0, 10.5), at(0, 9), 9, 10.5],
  // The middles are 2 apart: 2 + 4 to the far side, twice that across.
  ["a narrower body aside in a round hole", at(2, 8), at(0, 9), 9, 12],
  // Corners of a square stand on a circle of its diagonal, 8 x 1.41421.
  ["a square in a round hole wider than its side", rectangle(8, 8), at(0, 9), 9, 11.3137],
  ["a long body in a longer slot that is too low", rectangle(18, 8), rectangle(20, 6), 6, 8],
  ["a body aside in a rectangle that is larger", rectangle(8, 8, 3), rectangle(10, 20), 10, 14],
])("%s", (_what, body, opening, has, needs) => {
  const lack = openingLack(body, opening);
  expect(lack.has).toBeCloseTo(has, 9);
  expect(lack.needs).toBeCloseTo(needs, 2);
});

test("nothing is lacking less than nothing, and what an opening holds lacks nothing", () => {
  const side = fc.double({ min: 1, max: 30, noNaN: true });
  fc.assert(
    fc.property(side, side, side, fc.double({ min: -20, max: 20, noNaN: true }), (a, b, c, x) => {
      for (const body of [at(x, a), rectangle(a, b, x)])
        for (const opening of [at(0, c), rectangle(c, a)]) {
          const { has, needs } = openingLack(body, opening);
          expect(needs >= has).toBe(true);
          // Chords stand for arcs to a thousandth, once for each side.
          expect([needs - has > 0.004, containsContour(opening, body)]).not.toEqual([true, true]);
        }
    }),
  );
});
