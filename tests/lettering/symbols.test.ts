// Our own arrows and triangles: the same in every face, exact, and turned into one another by quarter turns.

import { describe, expect, it } from "vitest";
import { contourArea, regionArea } from "../../src/geometry/measure.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { arrowHead } from "../../src/lettering/symbols.ts";
import { everyFace, faceNamed, outlineFaces } from "./faces.ts";

const SYMBOLS = [..."▲▼◀▶←→↑↓"];
const SET = { capHeight: mm(5), align: "middle" } as const;

describe.each(everyFace.map((face) => [face.id, face] as const))("%s", (_, face) => {
  it.each(SYMBOLS)("sets %s as a shape of our own, centred on the capitals", (symbol) => {
    const { box, fills, strokes, missing, advance } = setText(face, symbol, SET);
    expect(missing).toEqual([]);
    expect(fills.length > 0).toBe(face.kind !== "single-line");
    expect(strokes.length > 0).toBe(face.kind === "single-line");
    expect((box.minY + box.maxY) / 2).toBeCloseTo(2.5, 12);
    expect((box.minX + box.maxX) / 2).toBeCloseTo(0, 12);
    expect(box.minY).toBeGreaterThanOrEqual(-1e-12);
    expect(box.maxY).toBeLessThanOrEqual(5 + 1e-12);
    expect(advance).toBeGreaterThan(box.maxX - box.minX);
  });

  it("sets symbols among letters", () => {
    const { missing } = setText(face, "▲ UP ▼ DOWN ←→", SET);
    expect(missing).toEqual([]);
  });
});

const areaOf = (symbol: string): number =>
  setText(faceNamed("overpass"), symbol, SET).fills.reduce(
    (sum, fill) => sum + regionArea(fill),
    0,
  );

it("draws triangles with equal sides of one cap height", () => {
  for (const symbol of "▲▼◀▶") expect(areaOf(symbol)).toBeCloseTo((Math.sqrt(3) / 4) * 25, 12);
});

it("gives the four arrows one area", () => {
  for (const symbol of "←↑↓") expect(areaOf(symbol)).toBeCloseTo(areaOf("→"), 12);
});

it.each([
  ["▲", "maxY"],
  ["▼", "minY"],
  ["▶", "maxX"],
  ["◀", "minX"],
  ["↑", "maxY"],
  ["↓", "minY"],
  ["→", "maxX"],
  ["←", "minX"],
] as const)("%s points to its side: only one corner reaches it", (symbol, side) => {
  const { box, fills } = setText(faceNamed("b612"), symbol, SET);
  const outline = fills[0]!.outline;
  if (outline.kind !== "loop") throw new Error("a symbol has corners");
  const axis = side.endsWith("Y") ? "y" : "x";
  const reaching = outline.vertices.filter((corner) => Math.abs(corner[axis] - box[side]) < 1e-9);
  expect(reaching.length).toBe(1);
});

it.each(outlineFaces.map((face) => [face.id, face] as const))(
  "%s: an arrow's shaft is as thick as the face's thinnest stroke",
  (_, face) => {
    const { fills, thinnest } = setText(face, "→", SET);
    const outline = fills[0]!.outline;
    if (outline.kind !== "loop") throw new Error("an arrow has corners");
    const left = Math.min(...outline.vertices.map(({ x }) => x));
    const tail = outline.vertices.filter(({ x }) => Math.abs(x - left) < 1e-9).map(({ y }) => y);
    expect(Math.max(...tail) - Math.min(...tail)).toBeCloseTo(thinnest, 12);
  },
);

it("makes an arrow's head with its tip at the origin, pointing right", () => {
  const { outline } = arrowHead(3, 2);
  expect(contourArea(outline)).toBeCloseTo(3, 12);
  expect(outline.kind === "loop" && outline.vertices.map(({ x, y }) => [x, y])).toContainEqual([
    0, 0,
  ]);
});
