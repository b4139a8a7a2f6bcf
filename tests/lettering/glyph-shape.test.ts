// Shapes of letters against HarfBuzz's outlines of the same font: the area under its curves (exact for quadratics and
// cubics, by Green's theorem) and points along its curves, which our arcs must pass within 2 µm.

import { describe, expect, it } from "vitest";
import { point } from "../../src/geometry/contour.ts";
import { pointToContour } from "../../src/geometry/distance.ts";
import { contourArea, contourLength, regionArea } from "../../src/geometry/measure.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { regionFaults } from "../../src/geometry/simple.ts";
import { curveFit } from "../../src/geometry/tolerance.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { faceNamed } from "./faces.ts";
import { outlineFonts } from "./packed-fonts.ts";
import { shaperOf } from "./shaper.ts";
import { readSvgCurves, type SvgCurve, signedArea } from "./svg-curves.ts";

const LETTERS = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789&%@?!/()°ÄÉØß"];
const CAP_HEIGHT = 4;

const pointOn = (curve: SvgCurve, t: number): { readonly x: number; readonly y: number } => {
  let points = curve.points;
  while (points.length > 1)
    points = points.slice(1).map((to, index) => {
      const from = points[index]!;
      return { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
    });
  return points[0]!;
};

describe.each(outlineFonts.map((record) => [record.id, record] as const))("%s", (id, record) => {
  const face = faceNamed(id);
  const shaper = shaperOf(record);
  const capital = Math.max(
    ...readSvgCurves(shaper.outline("E")).flatMap((curve) => curve.points.map(({ y }) => y)),
  );
  const scale = CAP_HEIGHT / capital;
  const present = LETTERS.filter((letter) => face.has(letter));

  it("has the area of HarfBuzz's outlines, within 2 µm along the boundary", () => {
    for (const letter of present) {
      const { fills } = setText(face, letter, { capHeight: mm(CAP_HEIGHT), align: "start" });
      const area = fills.reduce((total, region) => total + regionArea(region), 0);
      const contours = fills.flatMap(({ outline, holes }) => [outline, ...holes]);
      const boundary = contours.reduce((total, contour) => total + contourLength(contour), 0);
      const expected = Math.abs(signedArea(readSvgCurves(shaper.outline(letter)))) * scale ** 2;
      expect(Math.abs(area - expected), letter).toBeLessThan(boundary * curveFit);
      expect(expected).toBeGreaterThan(0);
    }
  });

  it("follows HarfBuzz's curves within 2 µm", () => {
    let worst = 0;
    for (const letter of present) {
      const { fills } = setText(face, letter, { capHeight: mm(CAP_HEIGHT), align: "start" });
      const contours = fills.flatMap(({ outline, holes }) => [outline, ...holes]);
      for (const curve of readSvgCurves(shaper.outline(letter)))
        for (const t of curve.points.length === 2 ? [0.5] : [0.19, 0.5, 0.83]) {
          const { x, y } = pointOn(curve, t);
          const at = point(x * scale, y * scale);
          worst = Math.max(worst, Math.min(...contours.map((c) => pointToContour(at, c).gap)));
        }
    }
    expect(worst).toBeLessThan(curveFit);
  });

  it("runs outlines counter-clockwise and holes clockwise, and no edge crosses another", () => {
    for (const letter of present) {
      const { fills } = setText(face, letter, { capHeight: mm(CAP_HEIGHT), align: "start" });
      for (const region of fills) {
        expect(contourArea(region.outline), letter).toBeGreaterThan(0);
        for (const hole of region.holes) expect(contourArea(hole), letter).toBeLessThan(0);
        expect(regionFaults(region), letter).toEqual([]);
      }
    }
  });

  it.each([
    ["A", 1, 1],
    ["B", 1, 2],
    ["O", 1, 1],
    ["E", 1, 0],
    ["%", 3, 2],
    ["i", 2, 0],
    ["Ä", 3, 1],
  ])("cuts %s as %i pieces with %i counters", (letter, pieces, counters) => {
    if (face.kind === "stencil") return;
    const { fills } = setText(face, letter, { capHeight: mm(CAP_HEIGHT), align: "start" });
    expect(fills.length).toBe(pieces);
    expect(fills.reduce((total, region) => total + region.holes.length, 0)).toBe(counters);
  });
});
