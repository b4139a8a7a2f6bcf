// Inside or outside, exactly: against a winding sum over a fine polygon, and at the places that catch ray tests out.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { containsContour, containsPoint } from "../../src/geometry/containment.ts";
import {
  type Contour,
  circle,
  loop,
  type Point,
  point,
  vertex,
} from "../../src/geometry/contour.ts";
import { pointToContour } from "../../src/geometry/distance.ts";
import { extent } from "../../src/geometry/extent.ts";
import { flattened } from "../../src/geometry/flatten.ts";
import { rectangle, roundedRectangle } from "../../src/geometry/shapes.ts";
import { anyLoop, coordinate } from "./any-shape.ts";

/** Turns of a fine polygon round the point, by adding up angles: slow, and shares nothing with the code under test. */
const turnsRound = (contour: Contour, at: Point): number => {
  const corners = flattened(contour, 1e-5);
  let angle = 0;
  for (const [index, from] of corners.entries()) {
    const to = corners[(index + 1) % corners.length]!;
    const ax = from.x - at.x;
    const ay = from.y - at.y;
    const bx = to.x - at.x;
    const by = to.y - at.y;
    angle += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
  return Math.round(angle / (2 * Math.PI));
};

describe("a point in a contour", () => {
  it("agrees with the turns of a fine polygon round it", () => {
    fc.assert(
      fc.property(anyLoop, coordinate, coordinate, (shape, x, y) => {
        const at = point(x / 2, y / 2);
        fc.pre(pointToContour(at, shape).gap > 1e-4);
        expect(containsPoint(shape, at)).toBe(turnsRound(shape, at) === 1);
      }),
    );
  });

  it("holds on lines through vertices and along chords", () => {
    const lens = loop([vertex(-6, 0, 0.5), vertex(6, 0, 0.5)]);
    for (const x of [-5.9, -1, 0, 3, 5.9]) expect(containsPoint(lens, point(x, 0))).toBe(true);
    for (const x of [-6.1, 6.1, 9]) expect(containsPoint(lens, point(x, 0))).toBe(false);
    const upright = loop([vertex(0, -6, 0.5), vertex(0, 6, 0.5)]);
    for (const y of [-5, 0, 5]) expect(containsPoint(upright, point(0, y))).toBe(true);
    const moon = loop([vertex(0, -6, 1), vertex(0, 6, -0.5)]);
    expect(containsPoint(moon, point(0, 0))).toBe(false);
    expect(containsPoint(moon, point(5, 0))).toBe(true);
    const diamond = loop([vertex(0, -4), vertex(4, 0), vertex(0, 4), vertex(-4, 0)]);
    expect(containsPoint(diamond, point(-3.9, 0))).toBe(true);
    expect(containsPoint(diamond, point(-4.1, 0))).toBe(false);
  });

  it("takes arcs as arcs: 1 nm either side of a circle's bow is told apart", () => {
    const round = loop([vertex(-5, 0, 1), vertex(5, 0, 1)]);
    const out = Math.SQRT1_2 * (5 + 1e-6);
    const within = Math.SQRT1_2 * (5 - 1e-6);
    expect(containsPoint(round, point(out, out))).toBe(false);
    expect(containsPoint(round, point(within, within))).toBe(true);
  });
});

describe("a contour in a contour", () => {
  const panel = roundedRectangle(extent(0, 0, 100, 50), 5);

  it("is told from one that crosses and one outside", () => {
    expect(containsContour(panel, circle(point(50, 25), 10))).toBe(true);
    expect(containsContour(panel, circle(point(95, 25), 10))).toBe(false);
    expect(containsContour(panel, circle(point(200, 25), 10))).toBe(false);
    expect(containsContour(circle(point(50, 25), 10), panel)).toBe(false);
    expect(containsContour(panel, panel)).toBe(true);
  });

  it("may touch from within, and may not stand out by a hundredth at a rounded corner", () => {
    expect(containsContour(panel, rectangle(extent(5, 0, 95, 50)))).toBe(true);
    expect(containsContour(panel, rectangle(extent(4.4, 0, 95, 50)))).toBe(false);
    expect(containsContour(panel, circle(point(5, 5), 5))).toBe(true);
    expect(containsContour(circle(point(0, 0), 5), circle(point(2, 0), 3))).toBe(true);
    expect(containsContour(circle(point(0, 0), 5), circle(point(2.01, 0), 3))).toBe(false);
  });

  it("crosses a notch although all its vertices lie inside", () => {
    const notched = loop([
      vertex(0, 0),
      vertex(10, 0),
      vertex(10, 10),
      vertex(6, 10),
      vertex(5, 2),
      vertex(4, 10),
      vertex(0, 10),
    ]);
    expect(containsContour(notched, rectangle(extent(1, 1, 9, 1.9)))).toBe(true);
    expect(containsContour(notched, rectangle(extent(1, 1, 9, 2.1)))).toBe(false);
  });
});
