// What the picture reckons between pointer and console: camera, rails, snapping, measuring. Against closed forms.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spaceDistance, type Vector, vector } from "../../src/geometry/space/vector.ts";
import {
  betweenGoals,
  type CameraGoal,
  cameraPlace,
  fittingDistance,
  nearedGoal,
  shiftedGoal,
  turnedGoal,
} from "../../viewer/console/camera-goal.ts";
import { placeWords } from "../../viewer/console/measure-words.ts";
import { measuredPair, snapped } from "../../viewer/console/measured-pair.ts";
import { alongLine, crossesBox, pulledModule } from "../../viewer/console/space-point.ts";

const goal: CameraGoal = { target: vector(100, 0, 700), distance: 1000, side: 0, rise: 0 };

const close = (a: Vector, b: Vector): void => expect(spaceDistance(a, b)).toBeLessThan(1e-9);

describe("the camera", () => {
  // Console axes as ISO 8855: x forward, y to the left, z up.
  test("stands behind, to the right, and above, by the numbers that a person uses", () => {
    close(cameraPlace(goal), vector(-900, 0, 700));
    close(cameraPlace({ ...goal, side: 90 }), vector(100, -1000, 700));
    expect(cameraPlace({ ...goal, rise: 30 }).z).toBeCloseTo(700 + 500, 9);
  });

  test("turned right round is where it was, and never goes over the top", () => {
    expect(turnedGoal(goal, { side: 360, rise: 0 })).toEqual(goal);
    expect(turnedGoal(goal, { side: 0, rise: 400 }).rise).toBeLessThan(90);
  });

  test("shifted to the right moves to the right of whoever looks, and keeps its distance", () => {
    const shifted = shiftedGoal(goal, { right: 0.1, up: 0.2 });
    close(shifted.target, vector(100, -100, 900));
    expect(spaceDistance(cameraPlace(shifted), shifted.target)).toBeCloseTo(1000, 9);
  });

  test("a ball fills the picture from where its edge is seen under half the opening", () => {
    // sin 30° = 1/2: a ball of 50 under 60° is seen from 100.
    expect(fittingDistance(50, 60)).toBeCloseTo(100, 9);
    expect(nearedGoal(goal, 1e-9).distance).toBeGreaterThan(0);
  });

  test("on its way it begins and ends where it should, and goes the shorter way round", () => {
    const to = { ...goal, side: 350, rise: 20, distance: 500 };
    close(cameraPlace(betweenGoals(goal, to, 0)), cameraPlace(goal));
    close(cameraPlace(betweenGoals(goal, to, 1)), cameraPlace(to));
    expect(betweenGoals(goal, to, 0.5).side).toBeCloseTo(355, 9);
  });
});

const coordinate = fc.double({ min: -500, max: 500, noNaN: true });
const anywhere = fc.record({ x: coordinate, y: coordinate, z: coordinate });

describe("a pointer's ray and a rail", () => {
  test("meet where the ray is aimed at the rail", () =>
    fc.assert(
      fc.property(anywhere, fc.double({ min: -900, max: 900, noNaN: true }), (eye, along) => {
        fc.pre(Math.hypot(eye.y, eye.z + 800) > 50);
        const line = { from: vector(0, 0, 0), way: vector(1, 0, 0) };
        const at = vector(along, 0, 0);
        const from = vector(eye.x, eye.y, eye.z + 800);
        const length = spaceDistance(from, at);
        const way = vector((at.x - from.x) / length, -from.y / length, -from.z / length);
        const found = alongLine(line, { from, way });
        // Nearly along the rail there is no answer; everywhere else it is the place that was aimed at.
        if (found !== null) expect(found).toBeCloseTo(along, 4);
        else expect(Math.hypot(way.y, way.z)).toBeLessThan(0.01);
      }),
    ));

  test("looked at end on say that they can't tell", () => {
    const line = { from: vector(0, 0, 0), way: vector(1, 0, 0) };
    expect(alongLine(line, { from: vector(-100, 1, 1), way: vector(1, 0, 0) })).toBeNull();
  });

  // 9.525 mm, 3/8 in: MS25212's pitch.
  test.each([
    [18, 0, 18],
    [18, 4.7, 18],
    [18, 4.8, 19],
    [18, -14.4, 16],
    [1, -40, 0],
  ])("pull a panel from module %d by %d mm to %d", (from, by, to) =>
    expect(pulledModule(from, { by, pitch: 9.525 })).toBe(to),
  );
});

test("a way crosses a box, misses it, or ends before it", () => {
  const box = { low: vector(0, 0, 0), high: vector(10, 10, 10) };
  const eye = vector(-10, 5, 5);
  expect(crossesBox(eye, vector(20, 5, 5), box)).toBe(true);
  expect(crossesBox(eye, vector(20, 40, 5), box)).toBe(false);
  expect(crossesBox(eye, vector(-1, 5, 5), box)).toBe(false);
  expect(crossesBox(vector(5, 5, 20), vector(5, 5, -1), box)).toBe(true);
  expect(crossesBox(vector(11, 5, 20), vector(11, 5, -1), box)).toBe(false);
});

describe("measuring", () => {
  const lines = [0, 0, 0, 100, 0, 0, 100, 0, 0, 100, 50, 0];

  test("a click is pulled to a corner before an edge, to an edge before nothing", () => {
    expect(snapped(vector(97, 2, 1), lines, 5)).toEqual({ at: vector(100, 0, 0), kind: "corner" });
    expect(snapped(vector(50, 2, 1), lines, 5)).toEqual({ at: vector(50, 0, 0), kind: "edge" });
    expect(snapped(vector(50, 20, 1), lines, 5)).toEqual({ at: vector(50, 20, 1), kind: "face" });
  });

  test("the nearest of several corners pulls", () =>
    expect(snapped(vector(100, 30, 0), lines, 100).at).toEqual(vector(100, 50, 0)));

  /** A circle of that radius round (200, 0, 10), drawn with so many sides; `share` of it. */
  const ring = (sides: number, { radius = 8, share = 1 } = {}): readonly number[] =>
    Array.from({ length: Math.round(sides * share) }, (_, side) =>
      [side, side + 1].flatMap((at) => {
        const turn = (2 * Math.PI * at) / sides;
        return [200 + radius * Math.cos(turn), radius * Math.sin(turn), 10];
      }),
    ).flat();

  test.each([8, 9, 24, 72])("a round edge of %d sides gives its axis, 16 mm across", (sides) => {
    const found = snapped(vector(208, 0.5, 10), [...lines, ...ring(sides)], 5);
    expect(found.kind).toBe("axis");
    expect(found.kind === "axis" && found.across).toBeCloseTo(16, 9);
    expect(spaceDistance(found.at, vector(200, 0, 10))).toBeLessThan(1e-9);
  });

  test("a nut has corners, and what is round for a quarter only has no axis", () => {
    expect(snapped(vector(208, 0.5, 10), ring(6), 5).kind).toBe("corner");
    expect(snapped(vector(208, 0.2, 10), ring(48, { share: 0.25 }), 5).kind).toBe("corner");
  });

  test("what was picked is said in words", () => {
    const pick = (edges: readonly number[], at: Vector): string =>
      placeWords(snapped(at, edges, 5), "face on winch");
    expect(pick(lines, vector(97, 2, 1))).toBe("a corner of “face on winch”");
    expect(pick(lines, vector(50, 2, 1))).toBe("an edge of “face on winch”");
    expect(pick(lines, vector(50, 20, 1))).toBe("a place on the face of “face on winch”");
    expect(pick(ring(24), vector(208, 0, 10))).toBe(
      "the axis of a round edge, 16 mm across, of “face on winch”",
    );
  });

  test("a pair has its distance and its components: 2, 3, 6 are 7 apart", () =>
    expect(measuredPair(vector(1, 1, 1), vector(3, -2, 7))).toEqual({
      distance: 7,
      forward: 2,
      aside: 3,
      up: 6,
    }));
});
