// One of many contours holds another whole exactly where asking each of them says so.

import fc from "fast-check";
import { expect, test } from "vitest";
import { containsContour } from "../../src/geometry/containment.ts";
import { type Contour, circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { isHeldByOne } from "../../src/geometry/held-by-one.ts";
import { rectangle } from "../../src/geometry/shapes.ts";

/** On a coarse grid, so that many touch, coincide or hold each other by nothing. */
const whole = fc.integer({ min: 0, max: 6 });
const contour: fc.Arbitrary<Contour> = fc.oneof(
  fc.tuple(whole, whole, fc.integer({ min: 1, max: 3 })).map(([x, y, r]) => circle(point(x, y), r)),
  fc
    .tuple(whole, whole, fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }))
    .map(([x, y, width, height]) => rectangle(extent(x, y, x + width, y + height))),
);

test("of any contours", () => {
  fc.assert(
    fc.property(fc.array(contour, { maxLength: 6 }), contour, (holders, inner) => {
      const each = holders.some((holder) => containsContour(holder, inner));
      expect(isHeldByOne(holders, inner)).toBe(each);
    }),
    { numRuns: 2000 },
  );
});
