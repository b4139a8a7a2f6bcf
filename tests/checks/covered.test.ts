// Legends under what moves or stands over the face: a thrown lever, a ball on it, a needle on its way, the head of a screw.
// Closed forms: a lever of length l, thrown by a, comes l sin a from its axis, and half its tip farther.

import { expect, test } from "vitest";
import { checked, ofCode } from "./panel.ts";

const CODE = "checks/marking-covered";

const word = (x: number, y: number): string =>
  `markings:\n  - legend: { text: I, at: { x: ${x} mm, y: ${y} mm } }\n`;

const found = (component: string, at: readonly [number, number]): readonly string[] =>
  ofCode(
    checked(`components:\n  a: { ${component}, at: { x: 100 mm, y: 100 mm } }\n${word(...at)}`),
    CODE,
  ).map(({ message }) => message);

// toggle-6-locking: 21.9 sin 12.5° + 2.75 = 7.49 mm; a capital of 4.2 mm reaches 2.1 mm to each side of its middle.
test.each([
  ["up", [100, 100 + 9.4], 1],
  ["up, clear of it", [100, 100 + 9.8], 0],
  ["down", [100, 100 - 9.4], 1],
  ["beside it", [108, 100], 0],
] as const)("a lever thrown %s", (_, at, count) => {
  expect(found("part: toggle-6-locking", at)).toHaveLength(count);
});

test("a lever of a part that is turned swings the other way", () => {
  expect(found("part: toggle-6-locking, turn: 90 deg", [100, 109.4])).toEqual([]);
  expect(found("part: toggle-6-locking, turn: 90 deg", [107.4, 100])).toHaveLength(1);
});

// (62 + 22/2) sin 35° + 25/2 = 54.37 mm; without the ball 62 sin 35° + 4 = 39.56 mm.
test("a ball on a lever covers what the bare lever does not", () => {
  expect(found("part: lever-quadrant, cap: cap-ball-25", [100, 152])).toHaveLength(1);
  expect(found("part: lever-quadrant, cap: cap-ball-25", [100, 157])).toEqual([]);
});

test("a legend above a toggle gets the gap that clears the lever, and it does", () => {
  const of = (legend: string): ReturnType<typeof checked> =>
    checked(`components:\n  a: { part: toggle-6-locking, at: centre, legend: ${legend} }\n`);
  const [one] = ofCode(of("{ text: RUN, gap: 1 mm }"), CODE);
  expect(one?.measured?.value).toBe(1);
  expect(one?.message).toMatch(/its gap is 1 mm, gap: 4\.5 mm would clear it/);
  expect(one?.remedies[0]?.title).toBe("gap: 4.5 mm (a)");
  expect(ofCode(of("{ text: RUN, gap: 4.5 mm }"), CODE)).toEqual([]);
});

// Its needle is 24 mm long and swings 120 degrees about the upright; its own marks are meant to lie under it.
test("a needle on its way covers a word, and not its own dial", () => {
  const dial = "part: servo-9g-needle, dial: { sweep: 120 deg, from: 0, to: 80, major: 20 }";
  expect(found(dial, [100, 150])).toEqual([]);
  expect(found(dial, [112, 116])).toHaveLength(1);
  expect(found(dial, [112, 88])).toEqual([]);
});

// Screw heads of the quadrant stand at 13, 46 from its axis and are 7.6 mm wide.
test("a screw's head covers a word", () => {
  expect(found("part: lever-quadrant", [116, 146])).toHaveLength(1);
  expect(found("part: lever-quadrant", [113, 155])).toEqual([]);
});

// Its record calls the ends of its travel held (along its line, up) and released; the ball comes 54.4 mm from the axis.
test("words at a lever's own positions stand clear of it, on the side that it is thrown to", () => {
  const of = checked(
    "components:\n  a: { part: lever-quadrant, at: { x: 100 mm, y: 100 mm }, positions: { held: HELD, released: FREE } }\n",
  );
  expect(ofCode(of, "layout/unknown-position")).toEqual([]);
  expect(ofCode(of, CODE)).toEqual([]);
  const box = (id: string) => of.layout.markings.find((marking) => marking.id === id)?.box;
  expect(box("a/held")?.minY).toBeGreaterThan(154.4);
  expect(box("a/released")?.maxY).toBeLessThan(45.6);
});
