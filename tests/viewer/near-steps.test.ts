// How near a drawing is seen: steps that lead back, and a place that stays under the pointer.

import { expect, test } from "vitest";
import { isNearest, scrolledTo, stepped } from "../../viewer/job-pack/near-steps.ts";

const nearer = (times: number, steps: number): number =>
  steps === 0 ? times : nearer(stepped(times, 1), steps - 1);

test("three steps nearer show it twice as large, three farther all of it again", () => {
  const twice = nearer(1, 3);
  expect(twice).toBeCloseTo(2, 12);
  expect(stepped(stepped(stepped(twice, -1), -1), -1)).toBe(1);
});

test("it is never smaller than whole, and comes to an end where it is nearest", () => {
  expect(stepped(1, -1)).toBe(1);
  const end = nearer(1, 100);
  expect(end).toBeCloseTo(32, 10);
  expect([isNearest(end), isNearest(stepped(end, -1)), isNearest(1)]).toEqual([true, false, false]);
  expect(stepped(end, 0)).toBe(1);
});

test("the place under the pointer stays there", () => {
  // 30 of 100 pixels in, not scrolled; twice as large it is 60 in, so that 30 are to be scrolled away.
  expect(scrolledTo({ x: 30, y: 10, left: 0, top: 0, by: 2 })).toEqual({ left: 30, top: 10 });
  // And back.
  expect(scrolledTo({ x: 30, y: 10, left: 30, top: 10, by: 1 / 2 })).toEqual({ left: 0, top: 0 });
  // Scrolled by 200, it lies at 230 of the drawing; four times as large at 920.
  expect(scrolledTo({ x: 30, y: 0, left: 200, top: 0, by: 4 }).left).toBe(920 - 30);
});
