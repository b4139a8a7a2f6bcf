// Where badges stand beside what they speak of. Every box is worked out by hand.

import { expect, test } from "vitest";
import { extent } from "../../src/geometry/extent.ts";
import { badgePlaces } from "../../viewer/panel/badge-places.ts";

const part = extent(0, 0, 10, 10);

test("a badge stands at the lower right of its part, outside of it", () => {
  expect(badgePlaces({ subjects: [part], seen: [part], radius: 2 })).toEqual([{ x: 12, y: 0 }]);
});

test("it gives way to a word that stands there", () => {
  // The word lies to the right of the part over its whole height, and below: the left is free.
  const word = extent(10, -6, 30, 12);
  expect(badgePlaces({ subjects: [part], seen: [part, word], radius: 2 })).toEqual([
    { x: -2, y: 0 },
  ]);
});

test("two badges of one part do not lie on each other", () => {
  const [one, other] = badgePlaces({ subjects: [part, part], seen: [part], radius: 2 });
  expect(Math.max(Math.abs(one!.x - other!.x), Math.abs(one!.y - other!.y))).toBeGreaterThanOrEqual(
    4,
  );
});

test("where nothing is free it stands where it covers least", () => {
  // A ground all round, thick but at the left, where it is 1 wide of the badge's 4.
  const all = [
    extent(-1, -9, 0, 19),
    extent(0, 10, 30, 30),
    extent(0, -20, 30, 0),
    extent(10, -20, 30, 30),
  ];
  const [at] = badgePlaces({ subjects: [part], seen: [part, ...all], radius: 2 });
  expect(at!.x).toBeLessThan(0);
});
