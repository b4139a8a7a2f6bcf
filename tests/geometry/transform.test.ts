// Moving, turning and mirroring change where a shape is and nothing else.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { containsPoint } from "../../src/geometry/containment.ts";
import { circle, type Loop, path, point, vertex } from "../../src/geometry/contour.ts";
import { contourArea, contourLength, pathLength } from "../../src/geometry/measure.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import {
  mirroredContour,
  mirroredPath,
  mirroredPoint,
  mirroredRegion,
  placedContour,
  placedPath,
  placedPoint,
  placedRegion,
  placement,
} from "../../src/geometry/transform.ts";
import { anyLoop, coordinate } from "./any-shape.ts";

const turns = fc.integer({ min: -720, max: 720 }).map((turn) => degrees(turn));

describe("placing", () => {
  it("keeps area, length and what lies inside", () => {
    fc.assert(
      fc.property(
        anyLoop,
        coordinate,
        coordinate,
        turns,
        coordinate,
        (shape, x, y, turn, probe) => {
          const at = { ...placement(x, y, turn), mirrored: x > 0 };
          const placed = placedContour(shape, at);
          expect(contourArea(placed)).toBeCloseTo(contourArea(shape), 7);
          expect(contourLength(placed)).toBeCloseTo(contourLength(shape), 8);
          const inside = point(probe / 3, 0.123);
          expect(containsPoint(placed, placedPoint(inside, at))).toBe(containsPoint(shape, inside));
        },
      ),
    );
  });

  it("is exact at quarter turns", () => {
    const turned = placedPoint(point(12.345, 6.78), placement(0, 0, degrees(90)));
    expect(turned).toEqual(point(-6.78, 12.345));
    const hole = placedContour(circle(point(3, 4), 2), placement(10, 20, degrees(180)));
    expect(hole).toEqual(circle(point(7, 16), 2));
  });

  it("places strokes and regions as it places contours", () => {
    const at = placement(5, 6, degrees(30));
    const stroke = path([vertex(0, 0, 1), vertex(4, 0), vertex(9, 2)]);
    expect(pathLength(placedPath(stroke, at))).toBeCloseTo(pathLength(stroke), 12);
    const hole = circle(point(1, 1), 0.5);
    const region = placedRegion({ outline: circle(point(0, 0), 9), holes: [hole] }, at);
    expect(region.holes).toEqual([placedContour(hole, at)]);
  });
});

describe("mirroring", () => {
  it("twice is nothing, and keeps loops running counter-clockwise", () => {
    fc.assert(
      fc.property(anyLoop, fc.integer({ min: -50, max: 50 }), (shape, axis) => {
        const once = mirroredContour(shape, mm(axis));
        expect(contourArea(once)).toBeCloseTo(contourArea(shape), 8);
        const twice = mirroredContour(once, mm(axis));
        expectSameLoop(twice.kind === "loop" ? twice : null, shape);
      }),
    );
  });

  it("sends x to the other side of the axis", () => {
    expect(mirroredPoint(point(2, 3), mm(10))).toEqual(point(18, 3));
    const stroke = mirroredPath(path([vertex(0, 0, 0.5), vertex(4, 0)]), mm(0));
    expect(stroke.vertices).toEqual([vertex(0, 0, -0.5), vertex(-4, 0)]);
    const region = mirroredRegion({ outline: circle(point(3, 0), 2), holes: [] }, mm(0));
    expect(region.outline).toEqual(circle(point(-3, 0), 2));
  });
});

const expectSameLoop = (found: Loop | null, expected: Loop): void => {
  expect(found?.vertices.length).toBe(expected.vertices.length);
  for (const [index, corner] of expected.vertices.entries()) {
    const other = found!.vertices[index]!;
    expect(other.x).toBeCloseTo(corner.x, 9);
    expect(other.y).toBeCloseTo(corner.y, 9);
    expect(other.bulge).toBeCloseTo(corner.bulge, 12);
  }
};
