// Areas, lengths, boxes and centroids against closed forms from plane geometry.

import { describe, expect, it } from "vitest";
import { circle, loop, path, point, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import {
  contourArea,
  contourCentroid,
  contourExtent,
  contourLength,
  pathExtent,
  pathLength,
  regionArea,
  reversedContour,
} from "../../src/geometry/measure.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { rectangle, roundedRectangle, slotContour } from "../../src/geometry/shapes.ts";

/** Bulge of an arc of this many degrees, by the definition of a bulge. */
const bulgeOf = (sweep: number): number => Math.tan((sweep * Math.PI) / 720);

/** Upper half of a disc of radius 10 round the origin. */
const halfDisc = loop([vertex(10, 0, 1), vertex(-10, 0)]);

describe("area", () => {
  it("of a rounded rectangle leaves (4 - pi) r² at the corners", () => {
    const area = contourArea(roundedRectangle(extent(0, 0, 146.05, 152.4), 3));
    expect(Math.abs(area - (146.05 * 152.4 - (4 - Math.PI) * 9))).toBeLessThan(1e-11);
  });

  it("of a rounded rectangle far from the origin is the same", () => {
    const area = contourArea(roundedRectangle(extent(1000, -2000, 1064, -1968), 3));
    expect(Math.abs(area - (64 * 32 - (4 - Math.PI) * 9))).toBeLessThan(1e-11);
  });

  it.each([0.001, 1, 20, 60, 90, 179, 180, 181, 300])("of a segment of %d degrees", (sweep) => {
    const angle = (sweep * Math.PI) / 180;
    const radius = 7.5;
    const from = vertex(radius, 0, bulgeOf(sweep));
    const to = vertex(radius * Math.cos(angle), radius * Math.sin(angle));
    const area = contourArea(loop([from, to]));
    // r² (a - sin a) / 2; below a degree the difference is taken from its series, a³ / 6.
    const expected =
      sweep < 1
        ? (radius * radius * angle ** 3) / 12
        : (radius * radius * (angle - Math.sin(angle))) / 2;
    expect(Math.abs(area - expected)).toBeLessThan(1e-11);
  });

  it("is negative for a loop that runs clockwise", () => {
    expect(contourArea(reversedContour(halfDisc))).toBeCloseTo(-50 * Math.PI, 11);
    expect(contourArea(halfDisc)).toBeCloseTo(50 * Math.PI, 11);
  });

  it("of a region is the outline's less the holes', whichever way they run", () => {
    const hole = rectangle(extent(2, 2, 4, 5));
    const outline = rectangle(extent(0, 0, 10, 10));
    expect(regionArea({ outline, holes: [hole, circle(point(7, 7), 1)] })).toBeCloseTo(
      94 - Math.PI,
      11,
    );
    expect(regionArea({ outline, holes: [reversedContour(hole)] })).toBeCloseTo(94, 11);
  });
});

describe("length, box and centroid", () => {
  it("of a slot: two sides and a circle", () => {
    const slot = slotContour(point(3, 4), { length: mm(12), width: mm(5), turn: degrees(30) });
    expect(contourLength(slot)).toBeCloseTo(14 + 5 * Math.PI, 11);
    const box = contourExtent(slot);
    expect(box.maxX).toBeCloseTo(3 + 3.5 * Math.cos(Math.PI / 6) + 2.5, 12);
    expect(box.maxY).toBeCloseTo(4 + 1.75 + 2.5, 12);
    expect(box.minX).toBeCloseTo(3 - 3.5 * Math.cos(Math.PI / 6) - 2.5, 12);
  });

  it("of an arc reaches out to its bow and no further", () => {
    expect(contourExtent(halfDisc)).toEqual(extent(-10, 0, 10, 10));
    const quarter = path([vertex(10, 0, bulgeOf(90)), vertex(0, 10)]);
    const box = pathExtent(quarter);
    expect(box.maxX).toBeCloseTo(10, 12);
    expect(box.minX).toBeCloseTo(0, 12);
    expect(pathLength(quarter)).toBeCloseTo(5 * Math.PI, 12);
  });

  // Centroid of a half disc: 4 r / 3 pi from its straight side (any table of plane figures).
  it("finds the centroid of a half disc", () => {
    const centre = contourCentroid(halfDisc);
    expect(centre.x).toBeCloseTo(0, 12);
    expect(centre.y).toBeCloseTo(40 / (3 * Math.PI), 12);
    const back = contourCentroid(reversedContour(halfDisc));
    expect(back.y).toBeCloseTo(40 / (3 * Math.PI), 12);
  });
});
