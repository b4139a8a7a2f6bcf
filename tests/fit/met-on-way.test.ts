// A way along things, against where a ball of its radius meets them by hand.

import { expect, test } from "vitest";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { metOnWay } from "../../src/fit/met-on-way.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { layered, solidLayer, solidRegion } from "../../src/geometry/solid/solid.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { madeBody } from "./made-bodies.ts";

/** 3.2 m long, its top at z = 10; from x = 3000 on it is `bump` higher. */
const board = (bump: number): ConsoleBody => {
  const part = (from: number, to: number) =>
    solidRegion({ outline: rectangle(extent(from, -50, to, 50)), holes: [] });
  return madeBody(
    "board",
    layered([
      solidLayer(0, 10, [part(0, 3200)]),
      ...(bump > 0 ? [solidLayer(10, 10 + bump, [part(3000, 3200)])] : []),
    ]),
  );
};

const along = (height: number, radius: number, bump: number): number | undefined =>
  metOnWay({ from: vector(-20, 0, height), to: vector(3200, 0, height), radius: mm(radius) }, [
    board(bump),
  ])[0]?.along;

test("3 m along a board are free where nothing stands on it", () => {
  expect(along(14, 4, 0)).toBeUndefined();
});

// A ball of 4 mm that rolls on the board meets the upright face at x = 3000 when its middle is 4 mm before it; from the
// start of the way, 20 mm before the board, that is 3016.
test("a bump at the end of 3 m along a surface is met", () => {
  expect(along(14, 4, 20)).toBeCloseTo(3016, 0);
});

// Its edge, 1 mm above the board, is met by the ball's flank: 3 mm below its middle, sqrt(16 - 9) before it.
test("a bump lower than the ball is met by its edge", () => {
  expect(along(14, 4, 1)).toBeCloseTo(3020 - Math.sqrt(7), 0);
});

test("a line of sight two hundredths over the surface meets what stands up from it", () => {
  expect(along(10.02, 0, 5)).toBeCloseTo(3020, 0);
});

test("a way far longer than what it passes costs no more than what it passes", () => {
  const far = { from: vector(-1e9, 0, 14), to: vector(1e9, 0, 14), radius: mm(4) };
  expect(metOnWay(far, [board(20)])[0]?.along).toBeCloseTo(1e9 + 2996, 0);
});

// It enters the boards where they begin, 20 mm on: that they are two there is nobody's way through.
test("a line of sight does not pass between two boards that lie on one another", () => {
  const square = solidRegion({ outline: rectangle(extent(0, -50, 3200, 50)), holes: [] });
  const boards = madeBody(
    "boards",
    layered([solidLayer(0, 10, [square]), solidLayer(10, 20, [square])]),
  );
  const way = { from: vector(-20, 0, 10), to: vector(3300, 0, 10), radius: mm(0) };
  expect(metOnWay(way, [boards])[0]?.along).toBeCloseTo(20, 1);
});
