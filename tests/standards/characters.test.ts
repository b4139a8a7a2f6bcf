import { expect, test } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import {
  arcMinutes,
  CHARACTER_ANGLES,
  characterHeight,
  SPACING,
  STROKE_SHARES,
  WIDTH_SHARES,
} from "../../src/standards/characters.ts";

// Height = 2 D tan(angle / 2) at 700 mm, derived; NUREG-0700 (15, 20; Rev 2: 16 to 22) and MIL-STD-411F (20) name the angles.
const AT_700 = [
  [15, 3.054],
  [16, 3.258],
  [20, 4.072],
  [22, 4.48],
  [24, 4.887],
] as const;

test.each(AT_700)("%i arc minutes at 700 mm are %f mm", (angle, height) => {
  expect(Math.abs(characterHeight(mm(700), angle) - height)).toBeLessThan(0.0005);
});

test("the runtime's own tangent gives the same height to a nanometre", () => {
  for (const [angle] of AT_700) {
    const other = 2 * 700 * Math.tan((angle / 60 / 2) * (Math.PI / 180));
    expect(Math.abs(characterHeight(mm(700), angle) - other)).toBeLessThan(1e-6);
  }
});

test("the angle of a height is the inverse", () => {
  for (const [angle] of AT_700)
    expect(arcMinutes(characterHeight(mm(650), angle), mm(650))).toBeCloseTo(angle, 9);
});

// The rule of thumb of the trade: distance / 200 is about 17 arc minutes.
test("a two-hundredth of the distance is 17 arc minutes", () => {
  expect(arcMinutes(mm(3.5), mm(700))).toBeCloseTo(17.19, 2);
});

test("angles and strokes carry their documents", () => {
  expect(CHARACTER_ANGLES.least).toEqual({
    arcMinutes: 15,
    source: "NUREG-0700 Rev 3, 11.4.1.5-1",
  });
  expect(CHARACTER_ANGLES.alerting.source).toMatch(/MIL-STD-411F/);
  // DOD-HDBK-791: dark on light is the bolder.
  expect(STROKE_SHARES.darkOnLight).toBeGreaterThan(STROKE_SHARES.lightOnDarkMost);
  expect(STROKE_SHARES.lightOnDarkMost).toBeGreaterThan(STROKE_SHARES.lightOnDarkLeast);
});

// DOD-HDBK-791, 6-5.3.2: width to height 3:5 to 1:1. NUREG-0700 Rev 3, 11.4.1.5-7: a stroke between characters, a
// character between words, half a height between lines.
test("widths and gaps", () => {
  expect(WIDTH_SHARES).toMatchObject({ least: 0.6, most: 1 });
  expect(SPACING).toMatchObject({
    betweenCharactersInStrokes: 1,
    betweenWordsInCharacters: 1,
    betweenLinesInHeights: 0.5,
  });
});
