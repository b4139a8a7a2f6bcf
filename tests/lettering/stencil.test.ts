// A stencil legend is cut right through: nothing may fall out of it. (The stencil's whole purpose.)

import { describe, expect, it } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { narrowestBridge } from "../../src/lettering/bridges.ts";
import { islandsOf } from "../../src/lettering/islands.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { everyFace, faceNamed } from "./faces.ts";
import { packedFonts } from "./packed-fonts.ts";
import { shaperOf } from "./shaper.ts";
import { readSvgCurves } from "./svg-curves.ts";

const SET = { capHeight: mm(6), align: "start" } as const;
const HAS_A_COUNTER = [..."ABDOPQR04689"];

describe("saira-stencil", () => {
  const face = faceNamed("saira-stencil");

  it.each([..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,:;-+/()!?&%"])(
    "%s has no island",
    (letter) => {
      const { fills, missing } = setText(face, letter, SET);
      expect(missing).toEqual([]);
      expect(fills.length).toBeGreaterThan(0);
      expect(islandsOf(fills)).toEqual([]);
    },
  );

  it("has bridges as wide as HarfBuzz's outline of E leaves between stem and bars", () => {
    const shaper = shaperOf(packedFonts.find(({ id }) => id === "saira-stencil")!);
    const points = readSvgCurves(shaper.outline("E")).flatMap((curve) => curve.points);
    const sides = [...new Set(points.map(({ x }) => x))].sort((a, b) => a - b);
    const capital = Math.max(...points.map(({ y }) => y));
    const expected = ((sides[2]! - sides[1]!) / capital) * 6;
    expect(narrowestBridge(face, "E", mm(6))).toBeCloseTo(expected, 9);
    expect(narrowestBridge(face, "EE\nE", mm(12))).toBeCloseTo(2 * expected, 9);
    expect(narrowestBridge(face, "I", mm(6))).toBe(null);
  });

  it("is the only stencil face", () => {
    expect(everyFace.filter(({ kind }) => kind === "stencil").map(({ id }) => id)).toEqual([
      "saira-stencil",
    ]);
  });
});

it.each(HAS_A_COUNTER)("an outline face's %s would drop its middle", (letter) => {
  const { fills } = setText(faceNamed("overpass"), letter, SET);
  expect(islandsOf(fills).length).toBeGreaterThan(0);
});
