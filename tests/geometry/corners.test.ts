// Rounded and relieved corners against the geometry of a round tool in a square corner.

import { describe, expect, it } from "vitest";
import { circle, type Loop, loop, point, vertex } from "../../src/geometry/contour.ts";
import {
  dogbonedLoop,
  filletedLoop,
  largestFillet,
  tightestInsideRadius,
} from "../../src/geometry/corners.ts";
import { pointToContour } from "../../src/geometry/distance.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { extent } from "../../src/geometry/extent.ts";
import { contourArea, reversedContour } from "../../src/geometry/measure.ts";
import { offsetContour } from "../../src/geometry/offset.ts";
import { pointDistance } from "../../src/geometry/point.ts";
import { polygon, rectangle, roundedRectangle } from "../../src/geometry/shapes.ts";
import { loopFaults } from "../../src/geometry/simple.ts";

const window = rectangle(extent(0, 0, 40, 20));
const bracket = polygon(
  [
    [0, 0],
    [20, 0],
    [20, 6],
    [6, 6],
    [6, 20],
    [0, 20],
  ].map(([x, y]) => point(x!, y!)),
);
const arcsOf = (
  shape: Loop,
): readonly { readonly radius: number; readonly centre: ReturnType<typeof point> }[] =>
  edgesOf(shape).filter((edge) => edge.kind === "arc");

describe("fillet", () => {
  it("of a rectangle is the rounded rectangle", () => {
    const rounded = filletedLoop(window, 3);
    expect(contourArea(rounded)).toBeCloseTo(
      contourArea(roundedRectangle(extent(0, 0, 40, 20), 3)),
      11,
    );
    expect(rounded.vertices).toHaveLength(8);
  });

  it("rounds the corners that turn inward, and those that stand in only where asked", () => {
    expect(arcsOf(filletedLoop(bracket, 1))).toHaveLength(5);
    expect(arcsOf(filletedLoop(bracket, 1, "all"))).toHaveLength(6);
    expect(arcsOf(filletedLoop(reversedContour(bracket), 1))).toHaveLength(5);
  });

  it("at a corner of any angle is tangent and leaves r² (1 / tan a - (pi / 2 - a)), a half the angle", () => {
    const wedge = polygon([point(0, 0), point(30, 0), point(30, 20)]);
    const cut = contourArea(wedge) - contourArea(filletedLoop(wedge, 1.5));
    const angles = [Math.atan2(20, 30), Math.PI / 2, Math.atan2(30, 20)];
    const expected = angles.reduce(
      (sum, angle) => sum + 1.5 * 1.5 * (1 / Math.tan(angle / 2) - (Math.PI - angle) / 2),
      0,
    );
    expect(cut).toBeCloseTo(expected, 10);
  });

  it("knows the largest radius that fits, and takes no larger", () => {
    expect(largestFillet(window)).toBeCloseTo(10, 12);
    expect(loopFaults(filletedLoop(window, 10))).toEqual([]);
    expect(() => filletedLoop(window, 10.01)).toThrow("fit their sides");
    expect(largestFillet(roundedRectangle(extent(0, 0, 9, 9), 1))).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("dogbone", () => {
  const toolRadius = 3.175 / 2;
  const relieved = dogbonedLoop(window, toolRadius);

  // A 1/8 in tool (3.175 mm): its circle passes through the corner, so that a square part goes in; measured from where
  // the tool would stop by itself it cuts (√2 - 1) r = 0.6576 mm further (geometry of the tangent circle).
  it("for a 3.175 mm tool reaches the corner, 0.6576 beyond the fillet", () => {
    const corners = [point(0, 0), point(40, 0), point(40, 20), point(0, 20)];
    for (const corner of corners) {
      const relief = arcsOf(relieved).find(({ centre }) => pointDistance(centre, corner) < 3);
      expect(relief?.radius).toBeCloseTo(toolRadius, 10);
      expect(pointDistance(relief!.centre, corner)).toBeCloseTo(toolRadius, 10);
      expect(pointToContour(corner, relieved).gap).toBeLessThan(1e-9);
    }
    const filleted = filletedLoop(window, toolRadius);
    expect(pointToContour(point(0, 0), filleted).gap).toBeCloseTo(0.6576, 4);
    expect(loopFaults(relieved)).toEqual([]);
  });

  it("lets the tool's centre run along the whole outline", () => {
    expect(offsetContour(relieved, -toolRadius * 0.999).kind).toBe("offset");
    expect(offsetContour(window, -toolRadius).kind).toBe("offset");
    expect(tightestInsideRadius(relieved)).toBeCloseTo(toolRadius, 9);
  });

  it("passes through the corner of a wedge as well", () => {
    const wedge = dogbonedLoop(polygon([point(0, 0), point(60, 0), point(0, 40)]), 1);
    for (const corner of [point(0, 0), point(60, 0), point(0, 40)])
      expect(pointToContour(corner, wedge).gap).toBeLessThan(1e-9);
    for (const { radius } of arcsOf(wedge)) expect(radius).toBeCloseTo(1, 9);
  });

  it("leaves corners that stand into the opening alone", () => {
    expect(arcsOf(dogbonedLoop(bracket, 1))).toHaveLength(5);
  });
});

describe("the tightest inside corner", () => {
  it.each([
    ["a sharp one", window, 0],
    ["a rounded one", roundedRectangle(extent(0, 0, 40, 20), 1.2), 1.2],
    ["a circle", circle(point(0, 0), 6.1), 6.1],
    ["one run clockwise", reversedContour(roundedRectangle(extent(0, 0, 40, 20), 1.2)), 1.2],
  ])("of %s", (_, contour, expected) => {
    expect(tightestInsideRadius(contour)).toBeCloseTo(expected, 10);
  });

  it("does not take a corner that stands in, nor a bow outward of a hole's arc, for one", () => {
    const notched = loop([
      vertex(0, 0, 0.2),
      vertex(30, 0, 0.2),
      vertex(30, 30, 0.2),
      vertex(0, 30, 0.2),
    ]);
    expect(tightestInsideRadius(notched)).toBe(0);
    const scalloped = loop([
      vertex(10, 0, Math.SQRT2 - 1),
      vertex(0, 10, -0.1),
      vertex(-10, 0, Math.SQRT2 - 1),
      vertex(0, -10, -0.1),
    ]);
    expect(tightestInsideRadius(scalloped)).toBe(0);
  });
});
