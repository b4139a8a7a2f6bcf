// The nearest clear place against looking at every place of the field, and its bounds on a field that is too large for that.

import fc from "fast-check";
import { expect, test } from "vitest";
import { type Cells, nearestByEdges, nearestClear } from "../../viewer/panel/nearest-clear.ts";

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Every place of the field, one after the other; of two as near the one to the right, then the lower. */
function byLooking(field: Cells, barred: readonly Cells[]): Place | null {
  const clear: Place[] = [];
  for (let x = field.minX; x <= field.maxX; x += 1)
    for (let y = field.minY; y <= field.maxY; y += 1) {
      const isBarred = barred.some(
        ({ minX, maxX, minY, maxY }) => minX <= x && x <= maxX && minY <= y && y <= maxY,
      );
      if (!isBarred) clear.push({ x, y });
    }
  const far = ({ x, y }: Place): number => x * x + y * y;
  return clear.toSorted((a, b) => far(a) - far(b) || b.x - a.x || a.y - b.y)[0] ?? null;
}

const cells = (most: number): fc.Arbitrary<Cells> =>
  fc
    .record({
      x: fc.integer({ min: -12, max: 12 }),
      y: fc.integer({ min: -12, max: 12 }),
      across: fc.integer({ min: 0, max: most }),
      up: fc.integer({ min: 0, max: most }),
    })
    .map(({ x, y, across, up }) => ({ minX: x, maxX: x + across, minY: y, maxY: y + up }));

test("is the one that looking at every place finds, wherever the origin lies", () => {
  fc.assert(
    fc.property(cells(16), fc.array(cells(9), { maxLength: 25 }), (field, barred) => {
      const looked = byLooking(field, barred);
      expect(nearestClear(field, barred)).toEqual(looked);
      expect(nearestByEdges(field, barred)).toEqual(looked);
    }),
    { numRuns: 600 },
  );
});

test("is the one that looking finds where the origin is walled in", () => {
  const field = { minX: -20, maxX: 20, minY: -20, maxY: 20 };
  const wall = { minX: -6, maxX: 6, minY: -6, maxY: 6 };
  fc.assert(
    fc.property(fc.array(cells(14), { minLength: 6, maxLength: 30 }), (more) => {
      const looked = byLooking(field, [wall, ...more]);
      expect(nearestClear(field, [wall, ...more])).toEqual(looked);
      expect(nearestByEdges(field, [wall, ...more])).toEqual(looked);
    }),
    { numRuns: 100 },
  );
});

test("none is found in a field that has none, or that is none", () => {
  const field = { minX: -3, maxX: 3, minY: -3, maxY: 3 };
  expect(nearestClear(field, [field])).toBeNull();
  expect(nearestClear({ ...field, maxX: -4 }, [])).toBeNull();
});

test("of four places as near the right one, of two as far to the right the lower one", () => {
  const field = { minX: -9, maxX: 9, minY: -9, maxY: 9 };
  const bar = { minX: -2, maxX: 2, minY: -2, maxY: 2 };
  expect(nearestClear(field, [bar])).toEqual({ x: 3, y: 0 });
  const across = { minX: -9, maxX: 9, minY: 0, maxY: 0 };
  expect(nearestClear(field, [across])).toEqual({ x: 0, y: -1 });
});

test("in the one free corner of a field of 400 million places", () => {
  const field = { minX: -10_000, maxX: 10_000, minY: -10_000, maxY: 10_000 };
  const barred = [
    { ...field, maxX: 9_998 },
    { ...field, maxY: 9_997 },
  ];
  expect(nearestClear(field, barred)).toEqual({ x: 9_999, y: 9_998 });
});
