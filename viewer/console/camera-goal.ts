// Where the camera stands, as numbers a person would use: what it looks at, from how far, from which side, how steeply.
// Pure: hands and keys give a new one, views and findings set one, a motion goes from one to another.

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
  vectorLength,
} from "../../src/geometry/space/vector.ts";
import { arithmeticNoise } from "../../src/geometry/tolerance.ts";

export interface CameraGoal {
  /** What it looks at. */
  readonly target: Vector;
  readonly distance: number;
  /** From where, seen from above, in degrees: 0 behind the console looking forward, 90 from its right. */
  readonly side: number;
  /** How high over the horizon it stands, in degrees. */
  readonly rise: number;
}

/** From which side and how steeply. */
export type Stance = Pick<CameraGoal, "side" | "rise">;

/** Toward the camera from what it looks at. */
const outward = ({ side, rise }: Stance): Vector => {
  const [turn, up] = [radians(side), radians(rise)];
  return vector(-Math.cos(turn) * Math.cos(up), -Math.sin(turn) * Math.cos(up), Math.sin(up));
};

export const cameraPlace = (goal: CameraGoal): Vector =>
  plus(goal.target, scaled(outward(goal), goal.distance));

/** Never quite over the top: there left and right would change places. */
const STEEPEST = 89.5;

export const turnedGoal = (goal: CameraGoal, by: { side: number; rise: number }): CameraGoal => ({
  ...goal,
  side: (((goal.side + by.side) % 360) + 360) % 360,
  rise: Math.max(-STEEPEST, Math.min(STEEPEST, goal.rise + by.rise)),
});

/** By shares of the distance: 0.1 to the right is a tenth of it. */
export const shiftedGoal = (goal: CameraGoal, by: { right: number; up: number }): CameraGoal => {
  const { right, up } = axesOf(goal);
  const move = plus(scaled(right, by.right * goal.distance), scaled(up, by.up * goal.distance));
  return { ...goal, target: plus(goal.target, move) };
};

const NEAREST = 30;
const FARTHEST = 20_000;

export const nearedGoal = (goal: CameraGoal, factor: number): CameraGoal => ({
  ...goal,
  distance: Math.max(NEAREST, Math.min(FARTHEST, goal.distance * factor)),
});

/** How far off a ball fills a picture whose smaller opening angle is `opening` (degrees). */
export const fittingDistance = (radius: number, opening: number): number =>
  Math.max(NEAREST, radius / Math.sin(radians(opening) / 2));

/** Opening angles of a picture, in degrees. */
export interface Opening {
  readonly across: number;
  readonly upright: number;
}

/** Room round what is framed, as a share of the picture. */
const MARGIN = 0.94;

/** From that side, no farther off than all the points need to be seen; the tighter way they fill the picture. */
export const framingGoal = (
  points: readonly Vector[],
  from: Stance,
  opening: Opening,
): CameraGoal => {
  const { out, right, up } = axesOf(from);
  const far = points.map((point) => -dot(point, out));
  const across = standingBack(
    points.map((point) => dot(point, right)),
    far,
    opening.across,
  );
  const upright = standingBack(
    points.map((point) => dot(point, up)),
    far,
    opening.upright,
  );
  const eye = Math.min(across.eye, upright.eye);
  const middle = (Math.min(...far) + Math.max(...far)) / 2;
  return {
    side: from.side,
    rise: from.rise,
    target: plus(
      plus(scaled(right, across.middle), scaled(up, upright.middle)),
      scaled(out, -middle),
    ),
    distance: Math.max(NEAREST, middle - eye),
  };
};

/** Whether all of them are in the picture, with the room round them that framing leaves. */
export const isSeenWhole = (
  points: readonly Vector[],
  goal: CameraGoal,
  opening: Opening,
): boolean => {
  const { out, right, up } = axesOf(goal);
  const eye = cameraPlace(goal);
  return points.every((point) => {
    const to = minus(point, eye);
    const far = -dot(to, out);
    const isWithin = (aside: number, angle: number): boolean =>
      Math.abs(aside) <= far * Math.tan(radians(angle) / 2) * MARGIN;
    return isWithin(dot(to, right), opening.across) && isWithin(dot(to, up), opening.upright);
  });
};

const axesOf = (
  from: Stance,
): { readonly out: Vector; readonly right: Vector; readonly up: Vector } => {
  const out = outward(from);
  const right = unitVector(cross(vector(0, 0, 1), out));
  return { out, right, up: cross(out, right) };
};

/**
 * In one direction of the picture: a point `aside` and `far` is seen by an eye where far - eye >= |aside - middle| / slope.
 * The two worst points, one on each side, give the middle and the nearest eye.
 */
const standingBack = (
  aside: readonly number[],
  far: readonly number[],
  opening: number,
): { readonly middle: number; readonly eye: number } => {
  const slope = Math.tan(radians(opening) / 2) * MARGIN;
  const high = Math.min(...aside.map((value, at) => far[at]! - value / slope));
  const low = Math.min(...aside.map((value, at) => far[at]! + value / slope));
  return { middle: (slope * (low - high)) / 2, eye: (low + high) / 2 };
};

/** On the way from one to another, `share` of it done; sides by the shorter way round. */
export const betweenGoals = (from: CameraGoal, to: CameraGoal, share: number): CameraGoal => {
  const part = (a: number, b: number): number => a + (b - a) * share;
  const turn = ((to.side - from.side + 540) % 360) - 180;
  return {
    target: plus(scaled(from.target, 1 - share), scaled(to.target, share)),
    distance: part(from.distance, to.distance),
    side: (from.side + turn * share + 360) % 360,
    rise: part(from.rise, to.rise),
  };
};

/** More than a hand or a key turns at once, in degrees, and nears or shifts, as a share of the distance. */
const LEAP = { turn: 15, share: 0.25 };

/** Whether nothing that is seen before is found again where it was. */
export const isLeap = (from: CameraGoal, to: CameraGoal): boolean => {
  const turn = Math.abs(((to.side - from.side + 540) % 360) - 180);
  return (
    Math.max(turn, Math.abs(to.rise - from.rise)) > LEAP.turn ||
    Math.abs(Math.log(to.distance / from.distance)) > LEAP.share ||
    vectorLength(minus(to.target, from.target)) > LEAP.share * from.distance
  );
};

/** Of a camera that looks against a direction. */
export const towardFrom = (out: Vector): Stance => {
  const side = inDegrees(Math.atan2(-out.y, -out.x));
  const rise = inDegrees(Math.asin(out.z / vectorLength(out)));
  return { side: (side + 360) % 360, rise: Math.min(STEEPEST, Math.max(-STEEPEST, rise)) };
};

/** So far off square that what is read stands upright, in degrees: 0.87 of its height is seen. */
const OFF_SQUARE = 30;

/**
 * Before a face as one stands to read it: its own up (y) upright in the picture, and as square on as that lets. A camera keeps
 * its own up under the vertical, so that a face whose up lies aside is seen square on, its letters lying as they lie for everyone.
 */
export const readersStance = ({ y, z }: Pick<Frame, "y" | "z">): Stance => {
  const square = towardFrom(z);
  const level = vector(y.x, y.y, 0);
  // Up the face is up in the room: no side has its letters lean.
  if (vectorLength(level) < arithmeticNoise) return square;
  const ahead = unitVector(level);
  // From above the reader looks the way that the face goes up, from below against it.
  const facing = z.z < 0 ? -1 : 1;
  const steep = inDegrees(Math.atan2(-facing * dot(z, ahead), facing * z.z));
  const upright = {
    side: towardFrom(scaled(ahead, -facing)).side,
    rise: facing * Math.min(STEEPEST, 90 - steep),
  };
  return dot(outward(upright), z) < Math.cos(radians(OFF_SQUARE)) ? square : upright;
};

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

const inDegrees = (turn: number): number => (turn * 180) / Math.PI;
