// Gaps against dense sampling of both outlines, and against sums anyone can do.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Contour, circle, loop, path, point, vertex } from "../../src/geometry/contour.ts";
import {
  contourDistance,
  contoursOverlap,
  contourToPathDistance,
  pointToContour,
} from "../../src/geometry/distance.ts";
import { pointAlong } from "../../src/geometry/edge.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { extent, extentGap } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { pointDistance } from "../../src/geometry/point.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { rectangle, roundedRectangle, slotContour } from "../../src/geometry/shapes.ts";
import { placedContour, placement } from "../../src/geometry/transform.ts";
import { anyContour, anyLoop } from "./any-shape.ts";

/** Least distance between samples of the two boundaries, and the most that sampling can add to the true gap. */
const sampledGap = (a: Contour, b: Contour): { readonly gap: number; readonly step: number } => {
  const samples = (contour: Contour): readonly ReturnType<typeof point>[] =>
    edgesOf(contour).flatMap((edge) =>
      Array.from({ length: 60 }, (_, index) => pointAlong(edge, index / 60)),
    );
  const others = samples(b);
  const own = samples(a);
  const gap = Math.min(...own.map((at) => Math.min(...others.map((to) => pointDistance(at, to)))));
  const spacing = (places: typeof own): number =>
    Math.max(...places.map((at, index) => pointDistance(at, places[(index + 1) % places.length]!)));
  return { gap, step: spacing(own) + spacing(others) };
};

describe("the gap between outlines", () => {
  it("is what dense sampling finds, never more", () => {
    fc.assert(
      fc.property(anyLoop, anyContour, fc.integer({ min: 0, max: 360 }), (a, shape, turn) => {
        const b = placedContour(shape, placement(35, 20, degrees(turn)));
        const found = contourDistance(a, b);
        const sampled = sampledGap(a, b);
        expect(found.gap).toBeLessThanOrEqual(sampled.gap + 1e-9);
        expect(found.gap).toBeGreaterThanOrEqual(sampled.gap - sampled.step);
        expect(pointDistance(found.from, found.to)).toBeCloseTo(found.gap, 9);
        expect(pointToContour(found.from, a).gap).toBeLessThan(1e-6);
        expect(pointToContour(found.to, b).gap).toBeLessThan(1e-6);
        expect(contourDistance(b, a).gap).toBeCloseTo(found.gap, 9);
      }),
      { numRuns: 60 },
    );
  });

  it("between two holes is centres less radii", () => {
    const { gap, from, to, overlaps } = contourDistance(
      circle(point(0, 0), 6.1),
      circle(point(3 * 19.05, 4 * 19.05), 3.2),
    );
    expect(gap).toBeCloseTo(5 * 19.05 - 9.3, 12);
    expect(from.x).toBeCloseTo(6.1 * 0.6, 12);
    expect(to.y).toBeCloseTo(4 * 19.05 - 3.2 * 0.8, 12);
    expect(overlaps).toBe(false);
  });

  it("faces a line, a bow and a corner", () => {
    const slot = slotContour(point(0, 10), { length: mm(10), width: mm(4), turn: degrees(0) });
    expect(contourDistance(slot, rectangle(extent(-20, -5, 20, 0))).gap).toBeCloseTo(8, 12);
    expect(contourDistance(slot, circle(point(12, 10), 1)).gap).toBeCloseTo(6, 12);
    expect(contourDistance(slot, rectangle(extent(6, 14, 9, 20))).gap).toBeCloseTo(3, 12);
  });

  it("of a hole inside is the web to the outline, and the areas overlap", () => {
    const found = contourDistance(circle(point(20, 6), 2), rectangle(extent(0, 0, 100, 50)));
    expect(found).toMatchObject({ gap: 4, overlaps: true });
  });
});

describe("overlap", () => {
  const square = rectangle(extent(0, 0, 10, 10));

  it.each([
    ["sharing an edge", rectangle(extent(10, 2, 15, 8)), false],
    ["sharing a corner", rectangle(extent(10, 10, 15, 15)), false],
    ["a tangent circle outside", circle(point(13, 5), 3), false],
    ["a tangent circle inside", circle(point(7, 5), 3), true],
    ["itself", rectangle(extent(0, 0, 10, 10)), true],
    ["a neighbour along part of an edge inside", rectangle(extent(5, 2, 10, 8)), true],
    ["crossing by a hundredth", rectangle(extent(9.99, 2, 15, 8)), true],
    ["crossing like a plus", rectangle(extent(-5, 4, 15, 6)), true],
    ["apart", circle(point(30, 5), 3), false],
  ])("of a square with %s", (_, other, expected) => {
    expect(contourDistance(square, other).overlaps).toBe(expected);
    expect(contourDistance(other, square).overlaps).toBe(expected);
    expect(contoursOverlap(square, other)).toBe(expected);
  });
});

describe("strokes, points and boxes", () => {
  it("measure to a stroke's centre line", () => {
    const stroke = path([vertex(0, 0), vertex(20, 0, 1), vertex(20, 10)]);
    const hole = circle(point(10, 7), 2);
    expect(contourToPathDistance(hole, stroke)).toMatchObject({ gap: 5, overlaps: false });
    expect(contourToPathDistance(circle(point(10, 1), 2), stroke).overlaps).toBe(true);
    expect(contourToPathDistance(circle(point(10, 0), 90), stroke).overlaps).toBe(true);
    expect(contourToPathDistance(circle(point(28, 5), 2), stroke).gap).toBeCloseTo(1, 12);
  });

  it("measure from a point inside and outside", () => {
    const plate = roundedRectangle(extent(0, 0, 20, 10), 2);
    expect(pointToContour(point(10, 4), plate).gap).toBeCloseTo(4, 12);
    expect(pointToContour(point(-1, -1), plate).gap).toBeCloseTo(3 * Math.SQRT2 - 2, 12);
    expect(pointToContour(point(3, 0), circle(point(0, 0), 5)).gap).toBe(2);
    expect(pointToContour(point(0, 0), circle(point(0, 0), 5)).gap).toBe(5);
  });

  it("measure between boxes", () => {
    const box = contourExtent(loop([vertex(0, 0), vertex(2, 0), vertex(0, 2)]));
    expect(extentGap(box, extent(5, 6, 9, 9))).toBe(5);
    expect(extentGap(box, extent(1, 1, 9, 9))).toBe(0);
  });
});
