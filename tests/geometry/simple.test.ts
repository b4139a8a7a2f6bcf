// What is not one simple loop, and what is not one sound region: every fault with its place.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Contour,
  circle,
  loop,
  type Point,
  point,
  vertex,
} from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { polygon, rectangle, roundedRectangle } from "../../src/geometry/shapes.ts";
import { loopFaults, regionFaults } from "../../src/geometry/simple.ts";

const byCorners = (corners: readonly (readonly [number, number])[]): Contour =>
  loop(corners.map(([x, y]) => vertex(x, y)));

describe("a loop", () => {
  it.each([
    ["a rectangle", rectangle(extent(0, 0, 5, 5))],
    ["a rounded rectangle", roundedRectangle(extent(0, 0, 5, 5), 1)],
    ["a slot of two arcs and two lines", roundedRectangle(extent(0, 0, 9, 4), 2)],
    ["a lens of two arcs", loop([vertex(0, 0, 0.3), vertex(8, 0, 0.3)])],
    ["a D", loop([vertex(3, 5, 2), vertex(-3, 5)])],
    ["a circle", circle(point(1, 1), 4)],
  ])("without fault: %s", (_, contour) => {
    expect(loopFaults(contour)).toEqual([]);
  });

  it("that crosses itself says where", () => {
    const bow = byCorners([
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 10],
    ]);
    expect(loopFaults(bow)).toEqual([{ at: point(5, 5), why: "two edges cross or touch" }]);
  });

  it("whose arc bulges through the opposite side says where", () => {
    const faults = loopFaults(
      loop([vertex(0, 0, -0.9), vertex(10, 0), vertex(10, 4), vertex(0, 4)]),
    );
    expect(faults).not.toEqual([]);
    for (const { at } of faults) expect(at.y).toBeCloseTo(4, 9);
  });
});

describe("a loop at fault", () => {
  it.each([
    [
      "touches itself",
      byCorners([
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 0],
        [0, 10],
      ]),
      "touch",
    ],
    [
      "doubles back",
      byCorners([
        [0, 0],
        [10, 0],
        [4, 0],
        [4, 6],
      ]),
      "doubles back",
    ],
    [
      "has an edge without length",
      byCorners([
        [0, 0],
        [10, 0],
        [10, 0],
        [4, 6],
      ]),
      "without length",
    ],
    ["has one edge", loop([vertex(0, 0, 1)]), "fewer than two"],
    ["has no edge", loop([]), "fewer than two"],
    ["has no numbers", loop([vertex(0, 0), vertex(Number.NaN, 0), vertex(3, 3)]), "finite"],
    ["is a circle without size", circle(point(0, 0), 0), "without size"],
    [
      "has a neighbour that comes back",
      loop([vertex(0, 0), vertex(10, 0, 2), vertex(8, -3), vertex(0, -8)]),
      "cross",
    ],
  ])("that %s", (_, contour, why) => {
    expect(
      loopFaults(contour)
        .map((fault) => fault.why)
        .join(),
    ).toContain(why);
  });
});

/** Twice the area of a triangle: on which side of a line a point lies. */
const side = (a: Point, b: Point, c: Point): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

const doCross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;

const pairsOf = (corners: readonly Point[]): readonly (readonly [number, number])[] =>
  corners.flatMap((_, first) =>
    corners.flatMap((_, second) => (second > first ? [[first, second] as const] : [])),
  );

describe("any closed run of lines", () => {
  const anyPlace = fc
    .tuple(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 9999 }))
    .map(([x, y]) => point(x / 101, y / 103));

  it("is at fault exactly where two of its lines cross, by the sides that their ends lie on", () => {
    fc.assert(
      fc.property(fc.array(anyPlace, { minLength: 4, maxLength: 7 }), (corners) => {
        const next = (index: number): Point => corners[(index + 1) % corners.length]!;
        const isClear = pairsOf(corners).every(
          ([a, b]) => Math.abs(side(corners[a]!, next(a), corners[b]!)) > 0.01,
        );
        const crosses = pairsOf(corners).some(([a, b]) =>
          doCross(corners[a]!, next(a), corners[b]!, next(b)),
        );
        const faults = loopFaults(loop(corners.map(({ x, y }) => vertex(x, y))));
        if (crosses) expect(faults).not.toEqual([]);
        else if (isClear) expect(faults).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });
});

describe("a region", () => {
  const outline = rectangle(extent(0, 0, 50, 30));

  it("without fault has its holes inside and apart", () => {
    const holes = [circle(point(10, 10), 4), rectangle(extent(20, 5, 30, 15))];
    expect(regionFaults({ outline, holes })).toEqual([]);
  });

  it.each([
    ["holes that overlap", [circle(point(10, 10), 4), circle(point(16, 10), 4)], "two holes"],
    ["a hole in a hole", [circle(point(10, 10), 4), circle(point(10, 10), 2)], "two holes"],
    ["holes that touch", [circle(point(10, 10), 4), circle(point(18, 10), 4)], "two holes"],
    ["a hole over the edge", [circle(point(2, 10), 4)], "crosses or touches"],
    ["a hole at the edge", [circle(point(4, 10), 4)], "crosses or touches"],
    ["a hole outside", [circle(point(90, 10), 4)], "outside"],
    ["a hole round the outline", [rectangle(extent(-5, -5, 60, 60))], "outside"],
    [
      "a hole that crosses itself",
      [polygon([point(1, 1), point(9, 9), point(9, 1), point(0.5, 9)])],
      "cross",
    ],
  ])("with %s", (_, holes, why) => {
    expect(
      regionFaults({ outline, holes })
        .map((fault) => fault.why)
        .join(),
    ).toContain(why);
  });
});
