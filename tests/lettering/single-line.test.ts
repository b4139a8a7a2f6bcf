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
import type { StrokePiece } from "../../src/lettering/stroke-piece.ts";
import { readSvgFont } from "../../src/lettering/svg-font.ts";
import { faceNamed } from "./faces.ts";

const folder = join(
  dirname(createRequire(import.meta.url).resolve("hersheytext/package.json")),
  "svg_fonts",
);
const FONTS = ["EMSReadability", "HersheySans1"] as const;

const font = (glyphs: string): string =>
  `<font id="x" horiz-adv-x="300"><font-face units-per-em="1000"/>${glyphs}</font>`;

const glyphOf = (attributes: string, character = "A") =>
  readSvgFont(font(`<glyph ${attributes} />`)).get(character);

const line = (from: readonly [number, number], to: readonly [number, number]): StrokePiece => ({
  from: { x: from[0], y: from[1] },
  curve: { kind: "line", to: { x: to[0], y: to[1] } },
});

const spot = ({ x, y }: FontPoint): string => `${x.toFixed(2)} ${y.toFixed(2)}`;

interface Stretch {
  readonly from: FontPoint;
  readonly to: FontPoint;
}

const linesOf = (pieces: readonly StrokePiece[]): readonly Stretch[] =>
  pieces.flatMap(({ from, curve }) => (curve.kind === "line" ? [{ from, to: curve.to }] : []));

const lengthOf = ({ from, to }: Stretch): number => Math.hypot(to.x - from.x, to.y - from.y);

/** Place of a point along a line, in units from its start, and its distance from the line. */
const seenFrom = (line: Stretch, at: FontPoint): { along: number; aside: number } => {
  const length = lengthOf(line);
  const x = (line.to.x - line.from.x) / length;
  const y = (line.to.y - line.from.y) / length;
  const dx = at.x - line.from.x;
  const dy = at.y - line.from.y;
  return { along: dx * x + dy * y, aside: Math.abs(dx * y - dy * x) };
};

/** Length, in font units, over which the second line lies on the first, within half a unit (the fonts' own rounding). */
const sharedLength = (line: Stretch, other: Stretch): number => {
  const start = seenFrom(line, other.from);
  const end = seenFrom(line, other.to);
  if (start.aside > 0.5 || end.aside > 0.5) return 0;
  const low = Math.max(0, Math.min(start.along, end.along));
  const high = Math.min(lengthOf(line), Math.max(start.along, end.along));
  return Math.max(0, high - low);
};

const isOn = (lines: readonly Stretch[], at: FontPoint): boolean =>
  lines.some((line) => {
    const { along, aside } = seenFrom(line, at);
    return aside <= 0.61 && along >= -0.61 && along <= lengthOf(line) + 0.61;
  });

describe.each(FONTS)("%s", (name) => {
  const glyphs = readSvgFont(readFileSync(join(folder, `${name}.svg`), "utf8"));

  it("has all of printable ASCII", () => {
    for (let code = 0x20; code < 0x7f; code += 1)
      expect(glyphs.has(String.fromCharCode(code))).toBe(true);
  });

  it("draws no stretch of line twice", () => {
    for (const [character, { pieces }] of glyphs) {
      const lines = linesOf(joinedStrokes(pieces).flat());
      for (const [index, one] of lines.entries())
        for (const other of lines.slice(index + 1))
          expect(sharedLength(one, other), character).toBeLessThan(1.5);
    }
  });

  it("draws all that the font draws", () => {
    for (const [character, { pieces }] of glyphs) {
      const drawn = joinedStrokes(pieces).flat();
      const lines = linesOf(drawn);
      for (const { from, to } of linesOf(pieces))
        for (const share of [0, 0.11, 0.37, 0.5, 0.72, 1]) {
          const at = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
          expect(isOn(lines, at), character).toBe(true);
        }
      const curves = (list: readonly StrokePiece[]): number =>
        list.filter(({ curve }) => curve.kind !== "line").length;
      expect(curves(drawn), character).toBe(curves(pieces));
    }
  });

  it("draws each stroke's pieces end to end", () => {
    for (const [character, { pieces }] of glyphs)
      for (const stroke of joinedStrokes(pieces))
        for (const [index, piece] of stroke.slice(1).entries())
          expect(spot(piece.from), character).toBe(spot(stroke[index]!.curve.to));
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

  it("draws a leg that is gone back over in part only once", () => {
    const strokes = joinedStrokes([
      line([0, 0], [0, 9]),
      line([0, 9], [0, 4]),
      line([0, 4], [5, 4]),
      line([5, 4], [5, 9]),
      line([5, 9], [5, 0]),
    ]);
    const length = linesOf(strokes.flat()).reduce((total, stretch) => total + lengthOf(stretch), 0);
    expect(length).toBe(9 + 5 + 9);
    expect(strokes.length).toBe(3);
  });

  it("turns a curve round with its controls, and drops it where it is drawn twice", () => {
    const bow: StrokePiece = {
      from: { x: 9, y: 0 },
      curve: { kind: "cubic", first: { x: 8, y: 5 }, second: { x: 1, y: 5 }, to: { x: 0, y: 0 } },
    };
    const back: StrokePiece = {
      from: { x: 0, y: 0 },
      curve: { kind: "cubic", first: { x: 1, y: 5 }, second: { x: 8, y: 5 }, to: { x: 9, y: 0 } },
    };
    expect(joinedStrokes([line([-9, 0], [0, 0]), bow, back])).toEqual([
      [line([-9, 0], [0, 0]), back],
    ]);
  });

  it("goes straight on at a crossing", () => {
    const strokes = joinedStrokes([
      line([-5, 0], [0, 0]),
      line([0, 0], [0, 5]),
      line([0, 0], [5, 0]),
      line([0, -5], [0, 0]),
    ]);
    expect(strokes.map((stroke) => stroke.at(-1)!.curve.to)).toEqual([
      { x: 5, y: 0 },
      { x: 0, y: -5 },
    ]);
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
