// Where one stands before a bay: its panels are seen as they are read. Against the pinhole camera of any textbook, whose up
// lies under the vertical, and frames written out by hand.

import { describe, expect, test } from "vitest";
import type { Frame } from "../../src/geometry/space/frame.ts";
import {
  cross,
  dot,
  minus,
  plus,
  scaled,
  unitVector,
  type Vector,
  vector,
} from "../../src/geometry/space/vector.ts";
import { type CameraGoal, cameraPlace } from "../../viewer/console/camera-goal.ts";
import type { ConsoleScene } from "../../viewer/console/console-messages.ts";
import { FIRST_LOOK } from "../../viewer/console/look.ts";
import { standingViews } from "../../viewer/console/standing-views.ts";

/** A face by its up and by what it faces, made square to the up. */
const face = (up: Vector, toward: Vector): Frame => {
  const y = unitVector(up);
  const z = unitVector(minus(toward, scaled(y, dot(toward, y))));
  return { x: cross(y, z), y, z, origin: vector(0, 0, 700) };
};

const sceneOf = (...frames: readonly Frame[]): ConsoleScene => ({
  name: "bench",
  title: "Bench",
  groups: [],
  bays: frames.map((frame, index) => ({
    id: `${index}`,
    frame,
    pitch: 10,
    length: 500,
    modules: 50,
    width: 150,
    depth: 100,
  })),
  panels: [],
  operator: null,
  envelope: null,
  box: { low: vector(0, 0, 0), high: vector(600, 300, 900) },
});

const OPENING = { across: 60, upright: 38 };

const viewOf = (frame: Frame, view = "bay 0"): CameraGoal =>
  standingViews(sceneOf(frame), OPENING, FIRST_LOOK).find(({ id }) => id === view)!.goal;

/** How a direction lies in the picture, and how squarely a face that looks along it is seen (1: square on). */
const seen = (goal: CameraGoal, { y, z }: Frame) => {
  const out = unitVector(minus(cameraPlace(goal), goal.target));
  const right = unitVector(cross(vector(0, 0, 1), out));
  const up = cross(out, right);
  return { across: dot(y, right), up: dot(y, up), square: dot(z, out) };
};

const DEGREE = Math.PI / 180;
const [sin15, cos15] = [Math.sin(15 * DEGREE), Math.cos(15 * DEGREE)];
const UP = vector(0, 0, 1);

describe("seen from its standing view", () => {
  // 0.02: a camera stands half a degree beside the vertical at most.
  test.each([
    ["a face that lies flat and goes up forward", face(vector(1, 0, 0), UP)],
    ["one that lies flat and goes up to the left", face(vector(0, 1, 0), UP)],
    [
      "one that is canted to whoever sits at its left",
      face(vector(1, 0, 0), vector(0, sin15, cos15)),
    ],
    [
      "one that rises forward and is canted",
      face(vector(cos15, 0, sin15), vector(0, sin15, cos15)),
    ],
    ["one that falls forward a little", face(vector(cos15, 0, -sin15), UP)],
    ["a rack that leans back", face(vector(sin15, 0, cos15), vector(-1, 0, 0))],
    ["a rack that stands upright", face(UP, vector(-1, 0, 0))],
    [
      "one overhead that goes up toward its reader",
      face(vector(-cos15, 0, sin15), vector(0, 0, -1)),
    ],
    ["one overhead that lies flat", face(vector(-1, 0, 0), vector(0, 0, -1))],
  ])("%s has its up upright and is nearly square on", (_, frame) => {
    const { across, up, square } = seen(viewOf(frame), frame);
    expect(Math.abs(across)).toBeLessThan(0.02);
    expect(up).toBeGreaterThan(0.9);
    // cos 15°, and the half degree.
    expect(square).toBeGreaterThan(cos15 - 0.005);
  });

  test("a flat desk as a whole is seen from where it is read", () => {
    for (const up of [vector(1, 0, 0), vector(0, -1, 0)]) {
      const desk = face(up, UP);
      expect(seen(viewOf(desk, "whole"), desk).up).toBeGreaterThan(0);
    }
  });

  test("a wall whose letters lie on their side is square on, as it lies for everyone", () => {
    const wall = face(vector(1, 0, 0), vector(0, 1, 0));
    const { across, square } = seen(viewOf(wall), wall);
    expect(square).toBeCloseTo(1, 6);
    expect(Math.abs(across)).toBeCloseTo(1, 6);
  });

  test("a bay has all of it in sight, whatever its slope", () => {
    const frame = face(vector(cos15, 0, sin15), vector(0, sin15, cos15));
    const goal = viewOf(frame);
    const eye = cameraPlace(goal);
    const ahead = unitVector(minus(goal.target, eye));
    const right = unitVector(cross(ahead, UP));
    for (const along of [0, 500])
      for (const aside of [-75, 75]) {
        const to = minus(
          plus(frame.origin, plus(scaled(frame.y, along), scaled(frame.x, aside))),
          eye,
        );
        const far = dot(to, ahead);
        expect(Math.abs(dot(to, right) / far)).toBeLessThan(Math.tan(30 * DEGREE));
        expect(Math.abs(dot(to, cross(right, ahead)) / far)).toBeLessThan(Math.tan(19 * DEGREE));
      }
  });
});

describe("the sides of a console with an operator", () => {
  const scene = {
    ...sceneOf(face(vector(1, 0, 0), UP)),
    operator: {
      hand: "right" as const,
      seat: vector(-200, 0, 450),
      shoulder: vector(-200, -200, 1050),
      eyes: [vector(-100, 0, 1200), vector(-100, 0, 1300)],
      functional: 680,
      extended: 740,
      source: "",
    },
  };
  const distance = (id: string, showReach: boolean): number =>
    standingViews(scene, OPENING, { showReach }).find((view) => view.id === id)!.goal.distance;

  test.each(["above", "left", "right", "behind"])(
    "%s: are seen from nearer while the rings of reach are not shown",
    (id) => expect(distance(id, false)).toBeLessThan(0.9 * distance(id, true)),
  );
});
