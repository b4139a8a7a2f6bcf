// Shapes drawn in for the spot of an engraver: closed forms, and sampling where a shape falls apart.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { difference } from "../../src/geometry/boolean.ts";
import { containsPoint } from "../../src/geometry/containment.ts";
import { circle, loop, point, type Region, vertex } from "../../src/geometry/contour.ts";
import { pointToContour } from "../../src/geometry/distance.ts";
import { pointAlong } from "../../src/geometry/edge.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { extent } from "../../src/geometry/extent.ts";
import { insetRegions } from "../../src/geometry/inset.ts";
import { contourLength, regionArea } from "../../src/geometry/measure.ts";
import { polygon, rectangle, roundedRectangle } from "../../src/geometry/shapes.ts";
import { thickOutline } from "../../src/geometry/thick-outline.ts";
import { anyLoop } from "./any-shape.ts";

const areaOf = (regions: readonly Region[]): number =>
  regions.reduce((sum, region) => sum + regionArea(region), 0);

const gapTo = (region: Region, at: ReturnType<typeof point>): number =>
  Math.min(...[region.outline, ...region.holes].map((own) => pointToContour(at, own).gap));

/** Two plates joined by a neck 4 mm wide. */
const dumbbell: Region = {
  outline: polygon(
    [
      [0, 0],
      [20, 0],
      [20, 8],
      [40, 8],
      [40, 0],
      [60, 0],
      [60, 20],
      [40, 20],
      [40, 12],
      [20, 12],
      [20, 20],
      [0, 20],
    ].map(([x, y]) => point(x!, y!)),
  ),
  holes: [],
};

describe("inset", () => {
  it("of a ring is a thinner ring of whole circles", () => {
    const ring = { outline: circle(point(0, 0), 10), holes: [circle(point(0, 0), 6)] };
    expect(insetRegions([ring], 0.5)).toEqual([
      { outline: circle(point(0, 0), 9.5), holes: [circle(point(0, 0), 6.5)] },
    ]);
    expect(insetRegions([ring], 2)).toEqual([]);
    expect(insetRegions([ring], 0)).toEqual([ring]);
  });

  it("keeps sharp corners sharp and lets tight arcs go to corners", () => {
    const plate = { outline: roundedRectangle(extent(0, 0, 20, 10), 1), holes: [] };
    const [drawnIn] = insetRegions([plate], 2);
    expect(edgesOf(drawnIn!.outline).map((edge) => edge.kind)).toEqual([
      "line",
      "line",
      "line",
      "line",
    ]);
    expect(regionArea(drawnIn!)).toBeCloseTo(16 * 6, 9);
  });

  it("falls apart at a neck, with the neck's corners rounded", () => {
    const apart = insetRegions([dumbbell], 2.5);
    expect(apart).toHaveLength(2);
    // Each plate of 15 x 15 loses nothing: the corners of the neck lie outside it.
    expect(areaOf(apart)).toBeGreaterThan(2 * 15 * 15);
    expect(insetRegions([dumbbell], 10.5)).toEqual([]);
    expect(insetRegions([dumbbell], 1.5)).toHaveLength(1);
  });

  it("breaks a ring whose hole stands off its middle", () => {
    const ring = { outline: circle(point(0, 0), 10), holes: [circle(point(3, 0), 4)] };
    const [crescent, ...more] = insetRegions([ring], 2);
    expect(more).toEqual([]);
    expect(crescent!.holes).toEqual([]);
    // What two circles of 8 and 6, 3 apart, leave: the larger less the lens of both.
    const part = (r: number, s: number): number => r * r * Math.acos((9 + r * r - s * s) / (6 * r));
    const lens = part(8, 6) + part(6, 8) - Math.sqrt(11 * 5 * 1 * 17) / 2;
    expect(regionArea(crescent!)).toBeCloseTo(64 * Math.PI - lens, 9);
  });

  it("moved as loops agrees with what a strip along the outline leaves", () => {
    fc.assert(
      fc.property(anyLoop, fc.integer({ min: 50, max: 3000 }), (outline, thousandths) => {
        const distance = thousandths / 1000;
        const region = { outline, holes: [] };
        const moved = areaOf(insetRegions([region], distance));
        const worn = areaOf(difference([region], thickOutline(outline, distance)));
        // The strips know the outline to a micrometre all along it.
        expect(Math.abs(moved - worn)).toBeLessThan(0.001 * contourLength(outline));
      }),
      { numRuns: 60 },
    );
  });

  it("keeps its distance everywhere", () => {
    fc.assert(
      fc.property(anyLoop, fc.integer({ min: 50, max: 4000 }), (outline, thousandths) => {
        const distance = thousandths / 1000;
        const region = { outline, holes: [circle(point(0, 0), 1)] };
        fc.pre(
          containsPoint(outline, point(0, 0)) && pointToContour(point(0, 0), outline).gap > 1.2,
        );
        for (const drawnIn of insetRegions([region], distance)) {
          for (const edge of [drawnIn.outline, ...drawnIn.holes].flatMap(edgesOf)) {
            for (const share of [0, 0.3, 0.6]) {
              // 1 µm of chord height and a corner worked out from it.
              expect(gapTo(region, pointAlong(edge, share))).toBeGreaterThan(distance - 0.0012);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it("of strokes thinner than the spot is nothing", () => {
    const stroke = { outline: rectangle(extent(0, 0, 9, 0.14)), holes: [] };
    expect(insetRegions([stroke], 0.075)).toEqual([]);
    const dot = { outline: loop([vertex(0, 0, 1), vertex(0.1, 0, 1)]), holes: [] };
    expect(insetRegions([dot], 0.075)).toEqual([]);
  });
});
