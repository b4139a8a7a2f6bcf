// Gaps between letters, to a nanometre where the sides are straight (HarfBuzz's advance less the stem), and never less than the
// letters' true distance. Letters set so tight that they touch come out united.

import { describe, expect, it } from "vitest";
import { regionArea } from "../../src/geometry/measure.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { characterGaps } from "../../src/lettering/character-gaps.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { faceNamed } from "./faces.ts";
import { packedFonts } from "./packed-fonts.ts";
import { shaperOf } from "./shaper.ts";
import { readSvgCurves } from "./svg-curves.ts";

const overpass = faceNamed("overpass");
const SET = { capHeight: mm(5), align: "start" } as const;

describe("overpass", () => {
  const shaper = shaperOf(packedFonts.find(({ id }) => id === "overpass")!);
  const stem = readSvgCurves(shaper.outline("I")).flatMap((curve) => curve.points);
  const stemWidth = Math.max(...stem.map(({ x }) => x)) - Math.min(...stem.map(({ x }) => x));
  const capital = Math.max(...stem.map(({ y }) => y));

  it("measures the gap between two stems", () => {
    const gaps = characterGaps(overpass, "II", { capHeight: mm(5) });
    const expected = ((shaper.width("II") - shaper.width("I") - stemWidth) / capital) * 5;
    expect(gaps).toEqual([
      { left: "I", right: "I", between: "characters", gap: expect.closeTo(expected, 6) },
    ]);
  });

  it("measures the gap between words", () => {
    const gaps = characterGaps(overpass, "I I", { capHeight: mm(5) });
    const expected = ((shaper.width("I I") - shaper.width("I") - stemWidth) / capital) * 5;
    expect(gaps).toEqual([
      { left: "I", right: "I", between: "words", gap: expect.closeTo(expected, 6) },
    ]);
  });

  it("goes by lines, and over what is missing", () => {
    const gaps = characterGaps(overpass, "AB\nC中D", { capHeight: mm(5) });
    expect(gaps.map(({ left, right }) => left + right)).toEqual(["AB", "CD"]);
  });

  it("grows with tracking", () => {
    const [plain] = characterGaps(overpass, "HH", { capHeight: mm(5) });
    const [tracked] = characterGaps(overpass, "HH", { capHeight: mm(5), tracking: mm(0.4) });
    expect(tracked!.gap - plain!.gap).toBeCloseTo(0.4, 6);
  });
});

it("measures strokes of a single-line face by their centre lines", () => {
  const face = faceNamed("single-line");
  const { strokes } = setText(face, "HH", SET);
  const [gap] = characterGaps(face, "HH", { capHeight: mm(5) });
  const xs = strokes.flatMap(({ vertices }) => vertices.map(({ x }) => x)).sort((a, b) => a - b);
  const widest = Math.max(...xs.slice(1).map((x, index) => x - xs[index]!));
  expect(gap!.gap).toBeGreaterThan(0);
  expect(gap!.gap).toBeLessThan(widest + 1e-9);
});

describe("letters that touch", () => {
  const areaOf = (text: string, tracking: number): number =>
    setText(overpass, text, { ...SET, tracking: mm(tracking) }).fills.reduce(
      (sum, region) => sum + regionArea(region),
      0,
    );

  it("are united, so that no ground is cut twice", () => {
    const apart = areaOf("HH", 0);
    const [gap] = characterGaps(overpass, "HH", { capHeight: mm(5) });
    const overlap = 0.2;
    const united = setText(overpass, "HH", { ...SET, tracking: mm(-gap!.gap - overlap) });
    expect(united.fills.length).toBe(1);
    // Two stems of H share a strip as tall as the capitals.
    expect(areaOf("HH", -gap!.gap - overlap)).toBeCloseTo(apart - overlap * 5, 2);
  });

  it("are told by a gap below zero", () => {
    const [gap] = characterGaps(overpass, "OO", { capHeight: mm(5), tracking: mm(-2) });
    expect(gap!.gap).toBeLessThan(0);
  });

  it("keep apart where only their boxes overlap", () => {
    const set = setText(faceNamed("b612"), "AVAWAY", SET);
    expect(set.fills.length).toBe(6);
  });
});
