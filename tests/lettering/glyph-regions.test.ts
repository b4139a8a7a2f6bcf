// Contours that cross are united by the non-zero rule, as type is drawn for (OpenType 1.9, "glyf": overlapping contours).
// No shipped font has any; areas here are computed by hand.

import { describe, expect, it } from "vitest";
import { point, type Region } from "../../src/geometry/contour.ts";
import { regionArea } from "../../src/geometry/measure.ts";
import { regionFaults } from "../../src/geometry/simple.ts";
import { glyphRegions } from "../../src/lettering/glyph-regions.ts";
import { hasCrossings } from "../../src/lettering/outline-crossing.ts";
import type { OutlineContour } from "../../src/lettering/outline-font.ts";

const contour = (...points: readonly (readonly [number, number])[]): OutlineContour => {
  const [start, ...rest] = points.map(([x, y]) => ({ x, y }));
  return { start: start!, curves: [...rest, start!].map((to) => ({ kind: "line", to }) as const) };
};

/** Clockwise, as TrueType draws what is black. */
const black = (x: number, y: number, width: number, height: number): OutlineContour =>
  contour([x, y], [x, y + height], [x + width, y + height], [x + width, y]);

const white = (x: number, y: number, width: number, height: number): OutlineContour =>
  contour([x, y], [x + width, y], [x + width, y + height], [x, y + height]);

const placed = (contours: readonly OutlineContour[]): readonly Region[] =>
  glyphRegions(contours, ({ x, y }) => point(x, y));

const areaOf = (regions: readonly Region[]): number =>
  regions.reduce((sum, region) => sum + regionArea(region), 0);

describe("contours that keep clear", () => {
  it.each([
    ["a ring", [black(0, 0, 10, 10), white(2, 2, 6, 6)], 1, 64],
    ["a ring in a ring", [black(0, 0, 20, 20), white(2, 2, 16, 16), black(6, 6, 8, 8)], 2, 208],
    ["two rings side by side", [black(0, 0, 9, 9), black(10, 0, 9, 9), white(13, 3, 3, 3)], 2, 153],
    ["black on black is black", [black(0, 0, 10, 10), black(3, 3, 2, 2)], 1, 100],
    ["cubic fonts turn the other way", [white(0, 0, 10, 10), black(2, 2, 6, 6)], 1, 64],
    ["nothing", [], 0, 0],
  ] as const)("%s", (_, contours, count, area) => {
    expect(hasCrossings(contours)).toBe(false);
    const regions = placed(contours);
    expect(regions.length).toBe(count);
    expect(areaOf(regions)).toBeCloseTo(area, 12);
  });
});

describe("contours that cross", () => {
  it.each([
    ["a plus of two bars", [black(4, 0, 2, 10), black(0, 4, 10, 2)], 1, 36],
    ["a bar over a counter", [black(0, 0, 10, 10), white(2, 2, 6, 6), black(4, -2, 2, 14)], 1, 84],
    ["bars that touch", [black(0, 0, 4, 4), black(4, 0, 4, 4)], 1, 32],
  ] as const)("%s", (_, contours, count, area) => {
    expect(hasCrossings(contours)).toBe(true);
    const regions = placed(contours);
    expect(regions.length).toBe(count);
    expect(areaOf(regions)).toBeCloseTo(area, 3);
    for (const region of regions) expect(regionFaults(region)).toEqual([]);
  });
});
