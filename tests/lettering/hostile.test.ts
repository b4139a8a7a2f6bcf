// Any text at all is set without throwing, to finite numbers, in reasonable time.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { type SetText, setText } from "../../src/lettering/set-text.ts";
import { everyFace, faceNamed } from "./faces.ts";

const CORPUS: readonly (readonly [string, string])[] = [
  ["emoji", "🛟⚓️👩‍🔧🏳️‍🌈"],
  ["combining marks piled up", `Z${"\u0301\u0323\u0489".repeat(3000)}`],
  ["right to left", "שלום \u202eABC\u202c مرحبا"],
  ["NUL and controls", "A\u0000B\u0007\u001b[31mC\u007f"],
  ["ten thousand letters", "WAVE/TO ".repeat(1250)],
  ["ten thousand strangers", "中".repeat(10000)],
  ["ten thousand lines", "A\n".repeat(10000)],
  ["half surrogates", "\ud83d\ude00\ude00\ud83d"],
  ["markup", "</svg><script>&amp;\u2028"],
  ["a property's name", "__proto__ constructor toString"],
];

const isWhole = (set: SetText): boolean => {
  let sum = set.advance + set.thinnest;
  for (const side of Object.values(set.box)) sum += side;
  for (const { outline, holes } of set.fills)
    for (const contour of [outline, ...holes])
      if (contour.kind === "loop")
        for (const { x, y, bulge } of contour.vertices) sum += Math.abs(x) + Math.abs(y) + bulge;
  for (const { vertices } of set.strokes)
    for (const { x, y, bulge } of vertices) sum += Math.abs(x) + Math.abs(y) + bulge;
  return Number.isFinite(sum);
};

describe.each(["barlow-condensed", "saira-stencil", "single-line"])("%s", (id) => {
  it.each(CORPUS)("takes %s", (_, text) => {
    const set = setText(faceNamed(id), text, { capHeight: mm(4), align: "middle" });
    expect(isWhole(set)).toBe(true);
  });
});

describe.each(everyFace.map((face) => [face.id, face] as const))("%s", (_, face) => {
  it("takes any text, and names only characters of it (composed) as missing", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => {
        const set = setText(face, text, { capHeight: mm(3.5), align: "end" });
        expect(isWhole(set)).toBe(true);
        const known = text + text.normalize("NFC");
        for (const character of set.missing) expect(known).toContain(character);
      }),
      { numRuns: 60 },
    );
  });
});

it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses a cap height of %f", (height) => {
  const face = everyFace[0]!;
  expect(() => setText(face, "A", { capHeight: mm(height), align: "start" })).toThrow("cap height");
});
