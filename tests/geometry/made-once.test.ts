// What is kept from one making to the next, by identity alone.

import { expect, test } from "vitest";
import { madeOnce, madeOnceWith, steadyLists } from "../../src/geometry/made-once.ts";

const counting = () => {
  let count = 0;
  return { next: () => ++count, count: () => count };
};

test("a thing is made once for each subject, however alike two subjects are", () => {
  const calls = counting();
  const doubled = madeOnce(({ size }: { readonly size: number }) => {
    calls.next();
    return { size: 2 * size };
  });
  const hole = { size: 3 };
  expect(doubled(hole)).toBe(doubled(hole));
  expect(doubled({ size: 3 })).toEqual({ size: 6 });
  expect(doubled({ size: 3 })).not.toBe(doubled(hole));
  expect(calls.count()).toBe(3);
});

test("with another thing given it is made anew, and then again with the first", () => {
  const calls = counting();
  const grown = madeOnceWith(
    ({ size }: { readonly size: number }, { by }: { readonly by: number }) => {
      calls.next();
      return size + by;
    },
  );
  const hole = { size: 3 };
  expect([grown(hole, { by: 1 }), grown(hole, { by: 1 })]).toEqual([4, 4]);
  expect(calls.count()).toBe(1);
  expect([grown(hole, { by: 2 }), grown(hole, { by: 1 })]).toEqual([5, 4]);
  expect(calls.count()).toBe(3);
});

test("what is given counts by what it is, not by what it says: a list made anew is another", () => {
  const length = madeOnceWith((_hole: object, { of }: { readonly of: readonly number[] }) => [
    ...of,
  ]);
  const [hole, list] = [{}, [1, 2]];
  expect(length(hole, { of: list })).toBe(length(hole, { of: list }));
  expect(length(hole, { of: [1, 2] })).not.toBe(length(hole, { of: [1, 2] }));
});

test("NaN and the two zeros are told apart as values are (ECMA-262, SameValue)", () => {
  const sign = madeOnceWith((_hole: object, { of }: { readonly of: number }) => 1 / of);
  const hole = {};
  expect(sign(hole, { of: 0 })).toBe(Number.POSITIVE_INFINITY);
  expect(sign(hole, { of: -0 })).toBe(Number.NEGATIVE_INFINITY);
});

test("a list is the one before as long as all that is in it is the same", () => {
  const steady = steadyLists<object, { readonly x: number }>((one, other) => one.x === other.x);
  const subject = {};
  const first = steady(subject, [{ x: 1 }, { x: 2 }]);
  expect(steady(subject, [{ x: 1 }, { x: 2 }])).toBe(first);
  expect(steady(subject, [{ x: 1 }])).toEqual([{ x: 1 }]);
  expect(steady(subject, [{ x: 1 }, { x: 2 }])).not.toBe(first);
  expect(steady({}, [])).toEqual([]);
});
