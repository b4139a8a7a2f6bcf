// A lid rests on four walls: what stands on the upper or lower one is measured from that edge.

import { expect, test } from "vitest";
import { checked, ofCode } from "./panel.ts";

const LID = `mount: box-lid
width: 180 mm
height: 110 mm
stack:
  - { layer: face, sheet: plate }
`;

test.each([
  [
    "top: 8 mm, x: centre",
    "begins 6.4 mm from the upper edge, where the wall covers 10 mm; 3.6 mm more",
  ],
  [
    "bottom: 8 mm, x: centre",
    "begins 6.4 mm from the lower edge, where the wall covers 10 mm; 3.6 mm more",
  ],
  [
    "left: 8 mm, y: centre",
    "begins 6.4 mm from the left edge, where the wall covers 10 mm; 3.6 mm more",
  ],
  [
    "right: 8 mm, y: centre",
    "begins 6.4 mm from the right edge, where the wall covers 10 mm; 3.6 mm more",
  ],
])("a lamp of 3.2 mm at %s", (place, words) => {
  const [found, ...others] = ofCode(
    checked(`components:\n  a: { part: led-3, at: { ${place} } }\n`, LID),
    "checks/rail-strip",
  );
  expect(others).toEqual([]);
  expect(found?.message).toContain(words);
  expect(found?.measured?.value).toBeCloseTo(6.4, 6);
  expect(found?.limit?.value).toBe(10);
});
