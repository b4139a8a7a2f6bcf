// Where an engraved area lies, when its corners may be worn and its size may not grow.

import { describe, expect, test } from "vitest";
import { extent } from "../../src/geometry/extent.ts";
import { placeOfMark } from "../../src/inspection/mark-place.ts";

const target = extent(0, 0, 20, 10);
/** Half a spot of 0.05: a corner of 39 degrees ends 0.05 further back than the rest, 1 / sin 19.5° less 1 being 2. */
const inset = 0.025;

describe("a worn area", () => {
  test("is in place where only its ends are worn, by no more than a leaning stroke is", () => {
    const place = placeOfMark(extent(0.03, 0, 19.98, 10), target, inset);
    expect(place).toEqual({ stray: { x: 0, y: 0 }, misfit: 0 });
  });

  test("is out of place by what no wear explains", () => {
    // Its right end lies too far right: wear moves it left only.
    const place = placeOfMark(extent(0.06, -0.02, 20.05, 9.97), target, inset);
    expect(place.stray.x).toBeCloseTo(0.05, 9);
    expect(place.stray.y).toBeCloseTo(-0.02, 9);
    expect(place.misfit).toBe(0);
  });

  test("is never larger than its letters, nor much smaller", () => {
    expect(placeOfMark(extent(-0.01, 0, 20.01, 10), target, inset).misfit).toBeCloseTo(0.02, 9);
    expect(placeOfMark(extent(0, 0, 19.85, 10), target, inset).misfit).toBeCloseTo(0.05, 9);
  });
});

test("a stroke is what its box is", () => {
  const place = placeOfMark(extent(0, 0.01, 19.98, 10.01), target, null);
  expect(place.stray.x).toBeCloseTo(-0.01, 9);
  expect(place.stray.y).toBeCloseTo(0.01, 9);
  expect(place.misfit).toBeCloseTo(0.02, 9);
});
