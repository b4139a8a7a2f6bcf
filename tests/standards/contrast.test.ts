// The contrast of two colours against figures that are published: WCAG 2.2's own extremes, and greys on white whose ratios stand in
// W3C's "Understanding SC 1.4.3" (#767676 is the lightest grey that passes, #777777 fails by a little).

import { expect, test } from "vitest";
import { contrastRatio, LEAST_CONTRAST } from "../../src/standards/contrast.ts";

test.each([
  ["#000000", "#ffffff", 21],
  ["#ffffff", "#ffffff", 1],
  ["#ffffff", "#767676", 4.54],
  ["#777777", "#ffffff", 4.48],
  // By hand from the shares of red, green and blue in white, 0.2126, 0.7152 and 0.0722 (ITU-R BT.709-6): 1.05 / (share + 0.05).
  ["#ff0000", "#ffffff", 4.0],
  ["#00ff00", "#ffffff", 1.37],
  ["#0000ff", "#ffffff", 8.59],
])("of %s and %s is as published, in either order", (a, b, published) => {
  expect(contrastRatio(a, b)).toBeCloseTo(published, 2);
  expect(contrastRatio(b, a)).toBe(contrastRatio(a, b));
});

test("the least is between the two greys", () => {
  expect(contrastRatio("#767676", "#ffffff")).toBeGreaterThan(LEAST_CONTRAST);
  expect(contrastRatio("#777777", "#ffffff")).toBeLessThan(LEAST_CONTRAST);
});
