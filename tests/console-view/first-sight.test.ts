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
import { partedSpots } from "../../viewer/console/picture-labels.ts";

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

describe("names that would lie over each other", () => {
  const name = (key: string, x: number, y: number, rank = 2) => ({
    key,
    rank,
    x,
    y,
    width: 80,
    height: 16,
  });

  test("stay where they are while there is room", () => {
    const spots = partedSpots([name("a", 0, 0), name("b", 0, 30)]);
    expect([spots.get("a")?.y, spots.get("b")?.y]).toEqual([0, 30]);
  });

  test("give way to the higher by their own height, and are left out where that is taken too", () => {
    const spots = partedSpots([
      name("a", 0, 0),
      name("b", 10, 4),
      name("c", 20, 0),
      name("d", 20, 2),
      name("chosen", 0, 2, 3),
    ]);
    expect(spots.get("chosen")?.y).toBe(2);
    const kept = [...spots.values()];
    for (const [index, one] of kept.entries())
      for (const other of kept.slice(index + 1))
        expect(Math.abs(one.x - other.x) >= 80 || Math.abs(one.y - other.y) >= 16).toBe(true);
    expect(spots.has("d")).toBe(false);
  });
});
