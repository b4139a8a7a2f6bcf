import { expect, test } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import {
  DEVICE_HOLES,
  DIN_RAIL,
  groupedCutOut,
  INSTRUMENT_CUT_OUTS,
  isCutOutWithin,
  ROUND_INSTRUMENTS,
} from "../../src/standards/panel-instruments.ts";

const ofBezel = (bezel: number) => INSTRUMENT_CUT_OUTS.find((row) => row.bezel === bezel)!;

// IEC 61554:1999: cut-outs 45 +0.6 for 48 (seen), 68 +0.7, 92 +0.8, 138 +1.0 (from memory, unverified).
test.each([
  [48, 45, 0.6],
  [72, 68, 0.7],
  [96, 92, 0.8],
  [144, 138, 1],
])("a bezel of %i takes %i +%f", (bezel, cutOut, plus) => {
  expect(ofBezel(bezel)).toMatchObject({ cutOut, plus });
});

// IEC 61554:1999: the cut-out's tolerance is only positive, the bezel's only negative, so that neighbours never collide.
test.each(INSTRUMENT_CUT_OUTS)("the rule of signs holds for a bezel of $bezel", (row) => {
  expect(isCutOutWithin(row.cutOut, row)).toBe(true);
  expect(isCutOutWithin(mm(row.cutOut + row.plus), row)).toBe(true);
  expect(isCutOutWithin(mm(row.cutOut - 0.01), row)).toBe(false);
  expect(isCutOutWithin(mm(row.cutOut + row.plus + 0.01), row)).toBe(false);
  // The widest cut-out is still covered by the bezel.
  expect(row.cutOut + row.plus).toBeLessThan(row.bezel);
});

// IEC 61554:1999: n of 96 without gaps need 96 (n - 1) + 92.
test.each([1, 2, 3, 5])("%i instruments of 96 side by side", (count) => {
  expect(groupedCutOut(count, ofBezel(96))).toBe(96 * (count - 1) + 92);
});

// IEC 60947-5-1: 22.3 with a notch 3.2 wide (seen).
test("the 22 mm hole and its notch", () => {
  expect(DEVICE_HOLES["22"]).toMatchObject({
    hole: 22.3,
    plus: 0.4,
    notch: { width: 3.2, over: 24.1 },
  });
});

test("sizes from memory say so", () => {
  expect(ofBezel(96).source).toMatch(/from memory/);
  expect(ofBezel(48).source).toBe("IEC 61554:1999");
  expect(DEVICE_HOLES["30"].source).toMatch(/from memory/);
});

// 2 1/4 in and 3 1/8 in (common practice); IEC 60715.
test("round instruments and rails", () => {
  expect(ROUND_INSTRUMENTS.small).toBeCloseTo(2.25 * 25.4, 10);
  expect(ROUND_INSTRUMENTS.large).toBeCloseTo(3.125 * 25.4, 10);
  expect(DIN_RAIL).toMatchObject({ width: 35, depths: [7.5, 15], module: 17.5 });
});
