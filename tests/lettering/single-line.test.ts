// Single-line faces: every line of the font's file is drawn, and none twice. (A line gone over twice burns twice as deep:
// "No double lines" is the rule of every laser shop; common practice.)

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { joinedStrokes } from "../../src/lettering/joined-strokes.ts";
import type { FontPoint } from "../../src/lettering/outline-font.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { readSvgFont, type StrokePiece } from "../../src/lettering/svg-font.ts";
import { faceNamed } from "./faces.ts";

const folder = join(
  dirname(createRequire(import.meta.url).resolve("hersheytext/package.json")),
  "svg_fonts",
);
const FONTS = ["EMSReadability", "EMSTech", "HersheySans1", "HersheySansMed"] as const;

const font = (glyphs: string): string =>
  `<font id="x" horiz-adv-x="300"><font-face units-per-em="1000"/>${glyphs}</font>`;

const glyphOf = (attributes: string, character = "A") =>
  readSvgFont(font(`<glyph ${attributes} />`)).get(character);

const line = (from: readonly [number, number], to: readonly [number, number]): StrokePiece => ({
  from: { x: from[0], y: from[1] },
  curve: { kind: "line", to: { x: to[0], y: to[1] } },
});

const spot = ({ x, y }: FontPoint): string => `${x.toFixed(2)} ${y.toFixed(2)}`;

const undirected = (piece: StrokePiece): string =>
  [spot(piece.from), spot(piece.curve.to)].sort().join(" - ") + piece.curve.kind;

describe.each(FONTS)("%s", (name) => {
  const glyphs = readSvgFont(readFileSync(join(folder, `${name}.svg`), "utf8"));

  it("has all of printable ASCII", () => {
    for (let code = 0x20; code < 0x7f; code += 1)
      expect(glyphs.has(String.fromCharCode(code))).toBe(true);
  });

  it("draws every line once, each stroke's pieces end to end", () => {
    for (const [character, { pieces }] of glyphs) {
      const strokes = joinedStrokes(pieces);
      const drawn = strokes.flat().map(undirected);
      expect(new Set(drawn), character).toEqual(new Set(pieces.map(undirected)));
      expect(new Set(drawn).size, character).toBe(drawn.length);
      for (const stroke of strokes)
        for (const [index, piece] of stroke.slice(1).entries())
          expect(spot(piece.from), character).toBe(spot(stroke[index]!.curve.to));
    }
  });
});

describe("reading an SVG font", () => {
  it.each([
    ['unicode="&#x41;"', "A"],
    ['unicode="&#65;"', "A"],
    ["unicode='&lt;'", "<"],
    ['unicode="&amp;"', "&"],
    ['unicode="&quot;"', '"'],
    ['unicode="&apos;"', "'"],
    ['unicode="&#x1F6DF;"', "🛟"],
  ])("knows %s as %s", (attributes, character) => {
    expect(glyphOf(attributes, character)?.advance).toBe(300);
  });

  it("decodes entities once", () => {
    expect(readSvgFont(font('<glyph unicode="&amp;lt;" />')).size).toBe(0);
  });

  it.each([
    ["M 0 0 L 10 0 L 10 5", 2],
    ["M0,0L10,0 10,5", 2],
    ["M 0 0 10 0 10 5", 2],
    ["M0 0L10 0L10 5Z", 3],
    ["M 0 0 L 1e1 0 L 10 -.5", 2],
    ["M 0 0 C 1 1 2 1 3 0", 1],
    ["M 0 0 L 0 0", 0],
    ["", 0],
  ])("reads %j as %i pieces", (data, count) => {
    expect(glyphOf(`unicode="A" d="${data}"`)?.pieces.length).toBe(count);
  });

  it.each(["M 0 0 A 1 1 0 0 1 2 2", "M 0 0 l 1 1", "M 0 0 L 1"])("refuses %j", (data) => {
    expect(() => glyphOf(`unicode="A" d="${data}"`)).toThrow("single-line font");
  });
});

describe("joining strokes", () => {
  it("joins pieces in any order and direction into one", () => {
    const strokes = joinedStrokes([
      line([1, 0], [2, 0]),
      line([1, 0], [0, 0]),
      line([3, 0], [2, 0]),
    ]);
    expect(strokes.map((stroke) => stroke.length)).toEqual([3]);
  });

  it("keeps a closed round as one closed stroke", () => {
    const round = joinedStrokes([line([0, 0], [1, 0]), line([1, 0], [1, 1]), line([1, 1], [0, 0])]);
    expect(round.length).toBe(1);
    expect(round[0]!.at(-1)!.curve.to).toEqual(round[0]![0]!.from);
  });

  it("draws a T in two strokes and its retraced bar once", () => {
    const strokes = joinedStrokes([
      line([0, 0], [0, 9]),
      line([0, 9], [-4, 9]),
      line([-4, 9], [0, 9]),
      line([0, 9], [4, 9]),
    ]);
    expect(strokes.map((stroke) => stroke.length).sort()).toEqual([1, 2]);
  });
});

it("sets text as strokes without fills, with no thickness of its own", () => {
  const set = setText(faceNamed("single-line"), "HAUL 90°", { capHeight: mm(4), align: "middle" });
  expect(set.fills).toEqual([]);
  expect(set.strokes.length).toBeGreaterThanOrEqual(7);
  expect(set.thinnest).toBe(0);
  expect(set.missing).toEqual([]);
});
