// Contours that cross are united by the non-zero rule, as type is drawn for (OpenType 1.9, "glyf": overlapping contours).
// No shipped font has any; areas here are computed by hand.

import { describe, expect, it } from "vitest";
import { point, type Region } from "../../src/geometry/contour.ts";
import { regionArea } from "../../src/geometry/measure.ts";
import { regionFaults } from "../../src/geometry/simple.ts";
import { curveFit } from "../../src/geometry/tolerance.ts";
import { glyphRegions } from "../../src/lettering/glyph-regions.ts";
import { hasCrossings } from "../../src/lettering/outline-crossing.ts";
import type { OutlineContour } from "../../src/lettering/outline-font.ts";
import { signedArea } from "./svg-curves.ts";

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

/** A round of four cubics (PostScript fonts draw so), counter-clockwise. */
const cubicRound = (centreX: number, radius: number): OutlineContour => {
  const reach = radius * ((4 / 3) * (Math.SQRT2 - 1));
  const at = (x: number, y: number) => ({ x: centreX + x, y });
  const corners = [at(radius, 0), at(0, radius), at(-radius, 0), at(0, -radius), at(radius, 0)];
  const controls = [
    [at(radius, reach), at(reach, radius)],
    [at(-reach, radius), at(-radius, reach)],
    [at(-radius, -reach), at(-reach, -radius)],
    [at(reach, -radius), at(radius, -reach)],
  ] as const;
  return {
    start: corners[0]!,
    curves: controls.map(([first, second], index) => ({
      kind: "cubic",
      first,
      second,
      to: corners[index + 1]!,
    })),
  };
};

describe("cubic contours", () => {
  it("become arcs with the area under the curves, by Green's theorem", () => {
    const round = cubicRound(0, 2);
    let from = round.start;
    const curves = round.curves.map((curve) => {
      if (curve.kind !== "cubic") throw new Error("drawn with cubics");
      const points = [from, curve.first, curve.second, curve.to];
      from = curve.to;
      return { points };
    });
    const [region] = placed([round]);
    expect(Math.abs(areaOf([region!]) - signedArea(curves))).toBeLessThan(4 * Math.PI * curveFit);
  });

  it("are united where they cross", () => {
    const apart = [cubicRound(0, 2), cubicRound(5, 2)];
    const crossing = [cubicRound(0, 2), cubicRound(2, 2)];
    expect(hasCrossings(apart)).toBe(false);
    expect(hasCrossings(crossing)).toBe(true);
    const regions = placed(crossing);
    expect(regions.length).toBe(1);
    // Two circles of radius r, r apart, share r² (2 pi / 3 - sqrt(3) / 2).
    const lens = 4 * ((2 * Math.PI) / 3 - Math.sqrt(3) / 2);
    expect(areaOf(regions)).toBeCloseTo(8 * Math.PI - lens, 1);
  });
});
