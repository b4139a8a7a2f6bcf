// What a face lacks is named, takes no room, and is never replaced by a box, a question mark or a look-alike.

import { describe, expect, it } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { everyFace, faceNamed } from "./faces.ts";
import { outlineFonts } from "./packed-fonts.ts";
import { shaperOf } from "./shaper.ts";

const SET = { capHeight: mm(4), align: "start" } as const;

describe.each(outlineFonts.map((record) => [record.id, record] as const))("%s", (id, record) => {
  it("has a character exactly where HarfBuzz finds a glyph for it", () => {
    const face = faceNamed(id);
    const shaper = shaperOf(record);
    for (const character of "AZaz09%°µ±×÷²³½€£©№Ωω≤≥√∞−–—•…ЖЯאع中ﬁ⌀")
      expect([character, face.has(character)]).toEqual([
        character,
        shaper.glyphIndex(character) !== 0,
      ]);
  });
});

it("names each missing character once, in the order of the text", () => {
  const { missing } = setText(faceNamed("b612"), "10 kΩ № Ω №5 中", SET);
  expect(missing).toEqual(["Ω", "№", "中"]);
});

it("gives a missing character no room", () => {
  const face = faceNamed("b612");
  const whole = setText(face, "A中B", SET);
  expect(whole.advance).toBe(setText(face, "A", SET).advance + setText(face, "B", SET).advance);
  expect(setText(face, "中", SET)).toEqual({
    fills: [],
    strokes: [],
    box: { minX: 0, minY: 0, maxX: 0, maxY: 0 },
    advance: 0,
    missing: ["中"],
    thinnest: setText(face, "A", SET).thinnest,
  });
});

describe.each(everyFace.map((face) => [face.id, face] as const))("%s", (_, face) => {
  it("sets an accent written apart from its letter as the letter with the accent", () => {
    expect(setText(face, "E\u0301", SET)).toEqual(setText(face, "\u00c9", SET));
    expect(face.has("E\u0301")).toBe(true);
  });

  it("reports an accent that no letter takes, and everything without a place on a face", () => {
    const text = "A\u0323\u0301\u0000\t\u200b\u200d\ufe0f\u00ad\ud800\u202e";
    const { missing } = setText(face, text, SET);
    expect(missing).toContain("\u0301");
    for (const character of "\u0000\t\u200b\u200d\ufe0f\u00ad\ud800\u202e")
      expect(missing).toContain(character);
    expect(face.has("\u00ad")).toBe(false);
    expect(face.has("")).toBe(false);
    expect(face.has("AB")).toBe(false);
  });
});
