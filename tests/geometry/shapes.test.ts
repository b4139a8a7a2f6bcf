// Ready-made outlines, edges and the places of a number on them.

import { describe, expect, it } from "vitest";
import { circle, loop, path, point, vertex } from "../../src/geometry/contour.ts";
import { fractionAlong, pointAlong } from "../../src/geometry/edge.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { extent } from "../../src/geometry/extent.ts";
import { flattened, flattenedPath } from "../../src/geometry/flatten.ts";
import { contourArea } from "../../src/geometry/measure.ts";
import { midpoint, offsetPoint, pointDistance } from "../../src/geometry/point.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { polygon, rectangle, roundedRectangle, slotContour } from "../../src/geometry/shapes.ts";

describe("shapes", () => {
  it("run counter-clockwise, however a polygon's points were given", () => {
    const corners = [point(0, 0), point(0, 5), point(4, 0)];
    expect(contourArea(polygon(corners))).toBeCloseTo(10, 12);
    expect(contourArea(polygon(corners.toReversed()))).toBeCloseTo(10, 12);
    expect(contourArea(rectangle(extent(1, 2, 4, 6)))).toBe(12);
  });

  it("make a slot of a rectangle whose corners take the whole side", () => {
    const pill = roundedRectangle(extent(0, 0, 10, 4), 2);
    expect(pill.vertices).toHaveLength(6);
    expect(contourArea(pill)).toBeCloseTo(24 + 4 * Math.PI, 11);
    expect(roundedRectangle(extent(0, 0, 4, 4), 2).vertices).toHaveLength(4);
  });

  it("refuse a corner that has no room", () => {
    expect(() => roundedRectangle(extent(0, 0, 10, 4), 2.1)).toThrow("corner fits");
  });

  it("make a circle of a slot that is as long as wide", () => {
    const round = slotContour(point(1, 2), { length: mm(6), width: mm(6), turn: degrees(15) });
    expect(round).toEqual(circle(point(1, 2), 3));
  });
});

describe("edges", () => {
  it("know centre, radius and direction of an arc", () => {
    const [arc] = edgesOf(path([vertex(5, 0, Math.SQRT2 - 1), vertex(0, 5)]));
    expect(arc).toMatchObject({ kind: "arc", turnsLeft: true });
    if (arc?.kind !== "arc") throw new Error("an arc was expected");
    expect(arc.radius).toBeCloseTo(5, 12);
    expect(pointDistance(arc.centre, point(0, 0))).toBeLessThan(1e-12);
    expect(arc.sweep).toBeCloseTo(Math.PI / 2, 14);
    const third = pointAlong(arc, 1 / 3);
    expect(third.y / third.x).toBeCloseTo(Math.tan(Math.PI / 6), 12);
    expect(fractionAlong(arc, third)).toBeCloseTo(1 / 3, 12);
  });

  it("of a circle are two half turns", () => {
    expect(edgesOf(circle(point(0, 0), 3)).map((edge) => edge.from.x)).toEqual([-3, 3]);
  });

  it("flatten with chords no higher than asked, corners on the arc", () => {
    const corners = flattened(circle(point(0, 0), 10), 0.01);
    for (const [index, corner] of corners.entries()) {
      expect(pointDistance(corner, point(0, 0))).toBeCloseTo(10, 12);
      const middle = midpoint(corner, corners[(index + 1) % corners.length]!);
      expect(10 - pointDistance(middle, point(0, 0))).toBeLessThanOrEqual(0.01 + 1e-12);
    }
    // Fewest chords that keep the height: half a turn over 2 acos(1 - h / r).
    expect(corners).toHaveLength(2 * Math.ceil(Math.PI / (2 * Math.acos(0.999))));
  });

  it("flatten strokes with both ends", () => {
    const stroke = path([vertex(0, 0), vertex(4, 0, 1), vertex(4, 2)]);
    const corners = flattenedPath(stroke, 0.05);
    expect(corners[0]).toEqual(point(0, 0));
    expect(corners.at(-1)).toEqual(point(4, 2));
    expect(offsetPoint(corners[0]!, 4, 0)).toEqual(corners[1]);
    expect(flattened(loop([vertex(0, 0), vertex(1, 0), vertex(0, 1)]), 0.1)).toHaveLength(3);
  });
});
