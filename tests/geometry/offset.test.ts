// Offsets against Steiner's formula, against sums for kerf, and against dense sampling; and what is refused.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { containsPoint } from "../../src/geometry/containment.ts";
import { type Contour, circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { pointToContour } from "../../src/geometry/distance.ts";
import { pointAlong } from "../../src/geometry/edge.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { extent } from "../../src/geometry/extent.ts";
import {
  contourArea,
  contourExtent,
  contourLength,
  reversedContour,
} from "../../src/geometry/measure.ts";
import { offsetContour } from "../../src/geometry/offset.ts";
import { polygon, rectangle, roundedRectangle } from "../../src/geometry/shapes.ts";
import { loopFaults } from "../../src/geometry/simple.ts";
import { anyLoop } from "./any-shape.ts";

const moved = (contour: Contour, distance: number, join?: "round" | "miter"): Contour => {
  const offset = offsetContour(contour, distance, join);
  if (offset.kind === "refused") throw new Error(offset.why);
  return offset.contour;
};

/** A channel 10 mm wide between two posts. */
const channel = polygon(
  [
    [0, 0],
    [30, 0],
    [30, 20],
    [20, 20],
    [20, 4],
    [10, 4],
    [10, 20],
    [0, 20],
  ].map(([x, y]) => point(x!, y!)),
);

describe("offset", () => {
  // Steiner's formula for a convex body grown by d: A' = A + P d + pi d², P' = P + 2 pi d.
  it("of 100 x 50 by 2 has Steiner's area", () => {
    const plate = rectangle(extent(0, 0, 100, 50));
    const grown = moved(plate, 2);
    expect(contourArea(grown)).toBeCloseTo(5612.566370614359, 9);
    expect(contourLength(grown)).toBeCloseTo(300 + 4 * Math.PI, 10);
    expect(contourArea(moved(plate, 2, "miter"))).toBeCloseTo(104 * 54, 10);
  });

  it("of any convex outline with arcs has Steiner's area too", () => {
    const eye = loop([vertex(-6, 0, 0.4), vertex(6, 0, 0.3), vertex(0, 6, 0.1)]);
    for (const distance of [0.05, 1, 7.5]) {
      const expected =
        contourArea(eye) + contourLength(eye) * distance + Math.PI * distance * distance;
      expect(contourArea(moved(eye, distance))).toBeCloseTo(expected, 9);
    }
  });

  // A beam 0.2 mm wide takes 0.1 mm on each side of its path (kerf: common practice of laser cutting).
  it("sets the path of a beam of 0.2 so that an opening of 2 x 4 would come out 2.2 x 4.2", () => {
    const box = contourExtent(moved(rectangle(extent(0, 0, 2, 4)), 0.1));
    expect(box.maxX - box.minX).toBeCloseTo(2.2, 12);
    expect(box.maxY - box.minY).toBeCloseTo(4.2, 12);
    const piece = contourExtent(moved(rectangle(extent(0, 0, 2, 4)), -0.1));
    expect(piece.maxX - piece.minX).toBeCloseTo(1.8, 12);
    expect(piece.maxY - piece.minY).toBeCloseTo(3.8, 12);
  });

  it("keeps arcs: a rounded corner of 3 grows to 5, and a circle stays a circle", () => {
    const plate = roundedRectangle(extent(0, 0, 60, 40), 3);
    const grown = moved(plate, 2);
    const radii = edgesOf(grown).flatMap((edge) => (edge.kind === "arc" ? [edge.radius] : []));
    expect(radii).toHaveLength(4);
    for (const radius of radii) expect(radius).toBeCloseTo(5, 9);
    expect(moved(circle(point(1, 2), 6.1), -0.1)).toEqual(circle(point(1, 2), 6));
  });

  it("lies everywhere at its distance", () => {
    fc.assert(
      fc.property(anyLoop, fc.integer({ min: -1500, max: 1500 }), (shape, thousandths) => {
        const distance = thousandths / 1000;
        const offset = offsetContour(shape, distance);
        if (offset.kind === "refused" || distance === 0) return;
        expect(loopFaults(offset.contour)).toEqual([]);
        for (const edge of edgesOf(offset.contour)) {
          for (let share = 0; share < 1; share += 0.09) {
            const at = pointAlong(edge, share);
            expect(Math.abs(pointToContour(at, shape).gap - Math.abs(distance))).toBeLessThan(1e-5);
            expect(containsPoint(shape, at)).toBe(distance < 0);
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  it("grown and drawn in again is the outline itself, where no corner was lost", () => {
    const plate = roundedRectangle(extent(0, 0, 60, 40), 3);
    expect(contourArea(moved(moved(plate, 2), -2))).toBeCloseTo(contourArea(plate), 9);
    expect(contourArea(moved(moved(plate, -2), 2))).toBeCloseTo(contourArea(plate), 9);
  });

  it("grows a loop that runs clockwise just the same", () => {
    const back = reversedContour(channel);
    expect(contourArea(moved(back, 1))).toBeCloseTo(-contourArea(moved(channel, 1)), 9);
    expect(contourArea(moved(back, -1))).toBeCloseTo(-contourArea(moved(channel, -1)), 9);
  });

  it("lets an arc of exactly the distance go to a sharp corner", () => {
    expect(contourArea(moved(roundedRectangle(extent(0, 0, 20, 10), 2), -2))).toBeCloseTo(96, 9);
  });

  it("rounds a mitred corner sharper than 60 degrees", () => {
    const blade = polygon([point(0, 0), point(40, 5), point(0, 10)]);
    const grown = moved(blade, 1, "miter");
    expect(contourExtent(grown).maxX).toBeLessThan(42);
    expect(edgesOf(grown).filter((edge) => edge.kind === "arc")).toHaveLength(1);
    const square = moved(rectangle(extent(0, 0, 5, 5)), 1, "miter");
    expect(edgesOf(square).every((edge) => edge.kind === "line")).toBe(true);
  });
});

describe("offset is refused", () => {
  it.each([
    [
      "an arc tighter than the distance",
      roundedRectangle(extent(0, 0, 20, 10), 2),
      -2.5,
      "an arc tighter",
    ],
    [
      "a concave arc when growing",
      loop([
        vertex(0, 0),
        vertex(10, 0),
        vertex(10, 10),
        vertex(6, 10, -1),
        vertex(4, 10),
        vertex(0, 10),
      ]),
      1.1,
      "an arc tighter",
    ],
    ["a rectangle drawn in past its middle", rectangle(extent(0, 0, 100, 50)), -25, "closes up"],
    ["a circle drawn in past its centre", circle(point(0, 0), 3), -3, "closes up"],
    ["a channel that grows shut", channel, 5.1, "closes up"],
    ["a floor drawn in through itself", channel, -2.1, "meets itself"],
    [
      "a loop with an edge without length",
      loop([vertex(0, 0), vertex(0, 0), vertex(5, 0), vertex(0, 5)]),
      0.1,
      "no length",
    ],
  ])("for %s", (_, contour, distance, why) => {
    const offset = offsetContour(contour, distance);
    expect(offset).toMatchObject({ kind: "refused" });
    expect(offset.kind === "refused" && offset.why).toContain(why);
  });

  it("just beyond what can be done, and not before", () => {
    expect(offsetContour(channel, 4.99).kind).toBe("offset");
    expect(offsetContour(channel, -1.99).kind).toBe("offset");
    expect(offsetContour(rectangle(extent(0, 0, 100, 50)), -24.99).kind).toBe("offset");
  });
});
