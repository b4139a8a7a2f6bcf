// What the picture of a console begins with: everything in sight and no nearer than needed, names that don't cover each
// other, and no name of what a cut has taken away. Against closed forms: the pinhole camera of any textbook.

import { describe, expect, test } from "vitest";
import {
  cross,
  dot,
  minus,
  spaceDistance,
  unitVector,
  type Vector,
  vector,
} from "../../src/geometry/space/vector.ts";
import { type CameraGoal, cameraPlace, framingGoal } from "../../viewer/console/camera-goal.ts";
import { NO_WAYS, partedSpots } from "../../viewer/console/name-spots.ts";
import { leadOf, type Spot, spotRound } from "../../viewer/console/spot-lines.ts";

const OPENING = { across: 60, upright: 38 };

const cornersOf = (low: Vector, high: Vector): readonly Vector[] =>
  [low.x, high.x].flatMap((x) =>
    [low.y, high.y].flatMap((y) => [low.z, high.z].map((z) => vector(x, y, z))),
  );

/** By a pinhole camera: shares of half the picture, 1 at its rim. */
const seenAt = (goal: CameraGoal, point: Vector): { across: number; up: number } => {
  const eye = cameraPlace(goal);
  const ahead = unitVector(minus(goal.target, eye));
  const right = unitVector(cross(ahead, vector(0, 0, 1)));
  const up = cross(right, ahead);
  const to = minus(point, eye);
  const slope = (degrees: number): number => Math.tan((degrees * Math.PI) / 360);
  const far = dot(to, ahead);
  expect(far).toBeGreaterThan(0);
  return {
    across: dot(to, right) / far / slope(OPENING.across),
    up: dot(to, up) / far / slope(OPENING.upright),
  };
};

describe("a camera that frames a box", () => {
  const box = cornersOf(vector(-200, -900, 0), vector(1400, 700, 1300));

  test.each([
    [305, 24],
    [0, 89],
    [270, 2],
    [40, -30],
  ])(
    "from side %d at a rise of %d has every corner in sight, the outermost near the rim",
    (side, rise) => {
      const goal = framingGoal(box, { side, rise }, OPENING);
      const seen = box.map((corner) => seenAt(goal, corner));
      const reach = Math.max(...seen.flatMap(({ across, up }) => [Math.abs(across), Math.abs(up)]));
      expect(reach).toBeLessThanOrEqual(0.9401);
      expect(reach).toBeGreaterThan(0.93);
    },
  );

  test("stands before a square as far off as half of it over the slope", () => {
    const square = [-100, 100].flatMap((y) => [-100, 100].map((z) => vector(0, y, z)));
    const goal = framingGoal(square, { side: 0, rise: 0 }, OPENING);
    expect(goal.distance).toBeCloseTo(100 / (0.94 * Math.tan((19 * Math.PI) / 180)), 6);
    expect(spaceDistance(goal.target, vector(0, 0, 0))).toBeLessThan(1e-9);
  });
});

const isOver = (a: Spot, b: Spot): boolean =>
  Math.abs(a.x - b.x) < (a.width + b.width) / 2 && Math.abs(a.y - b.y) < (a.height + b.height) / 2;

describe("words that would lie over each other", () => {
  const ground = { width: 776, height: 426, covered: [] };
  const word = (key: string, x: number, y: number, rank = 2) => ({
    key,
    rank,
    x: x + 100,
    y: y + 100,
    width: 80,
    height: 16,
    stands: "on" as const,
  });

  test("stay where they are while there is room", () => {
    const { spots } = partedSpots([word("a", 0, 0), word("b", 0, 30)], ground, NO_WAYS);
    expect([spots.get("a")?.y, spots.get("b")?.y]).toEqual([100, 130]);
  });

  test("give way to the higher by rows of their own height, and are left out where that is taken too", () => {
    const { spots } = partedSpots(
      [
        ...["a", "b", "c", "d", "e"].map((key, index) => word(key, 5 * index, 2 * index)),
        word("chosen", 0, 2, 3),
      ],
      ground,
      NO_WAYS,
    );
    expect(spots.get("chosen")?.y).toBe(102);
    const kept = [...spots.values()];
    for (const [index, one] of kept.entries())
      for (const other of kept.slice(index + 1)) expect(isOver(one, other)).toBe(false);
    expect(spots.has("e")).toBe(false);
  });
});

describe("names of panels", () => {
  /** Thirteen panels in a row of the picture, narrower than their names. */
  const panels = Array.from(
    { length: 13 },
    (_, index): Spot => ({ x: 190 + index * 30, y: 200 + index * 4, width: 28, height: 40 }),
  );
  const names = panels.map(({ x, y }, index) => ({
    key: `${index}`,
    rank: index === 4 ? 3 : 2,
    x,
    y,
    width: 86,
    height: 15,
    stands: "anywhere" as const,
  }));
  const ground = { width: 776, height: 426, covered: panels };
  const { spots, ways } = partedSpots(names, ground, NO_WAYS);

  test("are all there, in the picture, over no panel and no other name", () => {
    expect(spots.size).toBe(13);
    const all = [...spots.values()];
    for (const [index, spot] of all.entries()) {
      expect(spot.x - spot.width / 2).toBeGreaterThanOrEqual(0);
      expect(spot.x + spot.width / 2).toBeLessThanOrEqual(776);
      expect(spot.y - spot.height / 2).toBeGreaterThanOrEqual(0);
      expect(spot.y + spot.height / 2).toBeLessThanOrEqual(426);
      for (const other of [...panels, ...all.slice(index + 1)])
        expect(isOver(spot, other)).toBe(false);
    }
  });

  test("are led to their panels by lines that cross no other", () => {
    const turn = (a: Point, b: Point, c: Point): number =>
      (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    const lines = names.map((name) => leadOf(spots.get(name.key)!, name)!);
    for (const [index, { from, to }] of lines.entries())
      for (const other of lines.slice(index + 1)) {
        const isCrossing =
          turn(from, to, other.from) * turn(from, to, other.to) < 0 &&
          turn(other.from, other.to, from) * turn(other.from, other.to, to) < 0;
        expect(isCrossing).toBe(false);
      }
  });

  test("stand over panels where these fill the picture, and are left out where there is no picture", () => {
    const covered = [
      spotRound([
        { x: 0, y: 0 },
        { x: 776, y: 426 },
      ])!,
    ];
    expect(partedSpots(names, { ...ground, covered }, NO_WAYS).spots.size).toBe(13);
    expect(partedSpots(names, { width: 40, height: 10, covered: [] }, NO_WAYS).spots.size).toBe(0);
  });

  test("go the way that they went before while the picture turns by a little", () => {
    const shifted = <Each extends Point>(each: Each): Each => ({
      ...each,
      x: each.x + 3,
      y: each.y - 2,
    });
    const next = partedSpots(names.map(shifted), { ...ground, covered: panels.map(shifted) }, ways);
    for (const [key, spot] of spots) expect(next.spots.get(key)).toEqual(shifted(spot));
  });

  test("leave that way where something has come to stand there", () => {
    const gone = spots.get("3")!;
    const covered = [...panels, { ...gone, width: 4, height: 4 }];
    const next = partedSpots(names, { ...ground, covered }, ways).spots;
    expect(next.size).toBe(13);
    for (const spot of next.values())
      expect(covered.some((other) => isOver(spot, other))).toBe(false);
  });

  test("have no line where they stand on what they name", () => {
    const spot = { x: 100, y: 100, width: 80, height: 16 };
    expect(leadOf(spot, { x: 120, y: 104 })).toBe(null);
    // From the middle of its right edge.
    expect(leadOf(spot, { x: 200, y: 100 })).toEqual({
      from: { x: 140, y: 100 },
      to: { x: 200, y: 100 },
    });
  });
});

interface Point {
  readonly x: number;
  readonly y: number;
}
