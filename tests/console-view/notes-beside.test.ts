// Numbers of clashes and measures stand beside the place that they speak of, and within the picture.

import { expect, test } from "vitest";
import { NO_WAYS, partedSpots, type WantedSpot } from "../../viewer/console/name-spots.ts";

const GROUND = { width: 776, height: 426, covered: [] };

const note = (key: string, x: number, y: number): WantedSpot => ({
  key,
  rank: 4,
  x,
  y,
  width: 110,
  height: 22,
  stands: "beside",
});

const placed = (...notes: readonly WantedSpot[]) => {
  const { spots } = partedSpots(notes, GROUND, NO_WAYS);
  return notes.map(({ key }) => spots.get(key)!);
};

const isInPicture = ({
  x,
  y,
  width,
  height,
}: {
  x: number;
  y: number;
  width: number;
  height: number;
}) =>
  x - width / 2 >= 0 &&
  x + width / 2 <= GROUND.width &&
  y - height / 2 >= 0 &&
  y + height / 2 <= GROUND.height;

test("a note leaves the place that it speaks of to be seen, 20 pixels round it", () => {
  const [spot] = placed(note("clash", 400, 200));
  const aside = Math.max(0, Math.abs(spot!.x - 400) - 55);
  const up = Math.max(0, Math.abs(spot!.y - 200) - 11);
  expect(Math.hypot(aside, up)).toBeGreaterThan(20);
  expect(Math.hypot(aside, up)).toBeLessThan(40);
});

test("three of one place are all there, apart, in the picture and over the place of none", () => {
  const notes = [note("a", 400, 8), note("b", 401, 9), note("c", 396, 14)];
  const spots = placed(...notes);
  for (const [index, one] of spots.entries()) {
    expect(isInPicture(one)).toBe(true);
    for (const { x, y } of notes)
      expect(Math.abs(one.x - x) > 55 || Math.abs(one.y - y) > 11).toBe(true);
    for (const other of spots.slice(index + 1))
      expect(Math.abs(one.x - other.x) >= 110 || Math.abs(one.y - other.y) >= 22).toBe(true);
  }
});

test.each([
  ["over it", 400, -300],
  ["right of it", 2000, 200],
  ["past a corner", -50, 900],
])("what lies out of the picture, %s, is spoken of whole within it", (_, x, y) => {
  const [spot] = placed(note("clash", x, y));
  expect(isInPicture(spot!)).toBe(true);
});
