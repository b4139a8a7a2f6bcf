// The stroke of each face against HarfBuzz's own outlines of I and E (where their sides are straight), and its place in
// the range that handbooks ask for: 1/6 of the height dark on light, 1/7 to 1/8 light on dark (DOD-HDBK-791, 6-5.3.2).

import { describe, expect, it } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { faceNamed } from "./faces.ts";
import { outlineFonts } from "./packed-fonts.ts";
import { shaperOf } from "./shaper.ts";
import { readSvgCurves } from "./svg-curves.ts";

/** Lengths of material along a line that crosses straight sides only. */
const spans = (outline: string, along: "x" | "y", level: number): readonly number[] => {
  const across = along === "x" ? "y" : "x";
  const crossings = readSvgCurves(outline).flatMap(({ points }) => {
    const from = points[0]!;
    const to = points.at(-1)!;
    if (from[across] > level === to[across] > level) return [];
    expect(points.length).toBe(2);
    const share = (level - from[across]) / (to[across] - from[across]);
    return [from[along] + share * (to[along] - from[along])];
  });
  crossings.sort((a, b) => a - b);
  return crossings.flatMap((start, index) => (index % 2 ? [] : [crossings[index + 1]! - start]));
};

describe.each(outlineFonts.map((record) => [record.id, record] as const))("%s", (id, record) => {
  it("is measured as HarfBuzz's outlines have it", () => {
    const shaper = shaperOf(record);
    const points = readSvgCurves(shaper.outline("E")).flatMap((curve) => curve.points);
    const capital = Math.max(...points.map(({ y }) => y));
    const left = Math.min(...points.map(({ x }) => x));
    const right = Math.max(...points.map(({ x }) => x));
    const bars = spans(shaper.outline("E"), "y", left + 0.6 * (right - left));
    const stems = spans(shaper.outline("I"), "x", capital / 2);
    expect(bars.length).toBe(3);
    const { thinnest } = setText(faceNamed(id), "E", { capHeight: mm(4), align: "start" });
    expect(thinnest).toBeCloseTo((4 * Math.min(...bars, ...stems)) / capital, 2);
    expect(thinnest / 4).toBeGreaterThan(1 / 12);
    expect(thinnest / 4).toBeLessThan(1 / 4);
  });
});
