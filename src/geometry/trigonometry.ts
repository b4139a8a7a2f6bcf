// Sine, cosine, arc tangent and their kin from + - * / and square root alone, so that every engine gives the
// same bits: Math.sin and its kin differ between engines in the last bit of 3 to 17 % of arguments.
// Error below 2 units in the last place; `direction` is exact at multiples of 90 degrees, and in 0.5 at 30 and 60.

import { invariant } from "./invariant.ts";
import { type Degrees, degrees, type Radians, radians } from "./quantity.ts";

export interface Direction {
  readonly x: number;
  readonly y: number;
}

export const sine = (angle: Radians): number => {
  const { quarter, rest, tail } = reduced(angle);
  const value = quarter % 2 === 0 ? sineNear(rest, tail) : cosineNear(rest, tail);
  return quarter < 2 ? value : -value;
};

export const cosine = (angle: Radians): number => {
  const { quarter, rest, tail } = reduced(angle);
  const value = quarter % 2 === 0 ? cosineNear(rest, tail) : sineNear(rest, tail);
  return quarter === 1 || quarter === 2 ? -value : value;
};

export const tangent = (angle: Radians): number => sine(angle) / cosine(angle);

/** Angle whose tangent is `value`, in -pi/2 .. pi/2. */
export const arcTangent = (value: number): Radians => {
  invariant(!Number.isNaN(value), "an arc tangent is asked of a number");
  const size = Math.abs(value);
  const angle = size <= 1 ? arcTangentTo1(size) : halfPi - (arcTangentTo1(1 / size) - halfPiTail);
  return radians(value < 0 ? -angle : angle);
};

/** Angle of the point (x, y) from +x, above -pi and up to pi; 0 at the origin. -0 counts as 0. */
export const arcTangent2 = (y: number, x: number): Radians => {
  const height = Math.abs(y);
  const width = Math.abs(x);
  if (height === 0 && width === 0) return radians(0);
  const acute =
    height <= width
      ? arcTangentTo1(height / width)
      : halfPi - (arcTangentTo1(width / height) - halfPiTail);
  const angle = x < 0 ? pi - (acute - piTail) : acute;
  return radians(y < 0 ? -angle : angle);
};

export const arcSine = (value: number): Radians => {
  invariant(Math.abs(value) <= 1, "an arc sine is asked of -1 .. 1");
  return arcTangent2(value, Math.sqrt((1 - value) * (1 + value)));
};

export const arcCosine = (value: number): Radians => {
  invariant(Math.abs(value) <= 1, "an arc cosine is asked of -1 .. 1");
  return arcTangent2(Math.sqrt((1 - value) * (1 + value)), value);
};

export const toRadians = (angle: Degrees): Radians => radians((angle * pi) / 180);

export const toDegrees = (angle: Radians): Degrees => degrees((angle * 180) / pi);

/** Unit vector at `angle` degrees counter-clockwise from +x. */
export const direction = (angle: Degrees): Direction => {
  invariant(Number.isFinite(angle), "a direction is asked of a finite angle");
  const turned = angle % 360;
  const positive = turned < 0 ? turned + 360 : turned;
  const quarter = Math.round(positive / 90);
  const near = nearAxis(positive - quarter * 90);
  return quarterTurned(near, quarter % 4);
};

/** Unit vector at `angle` degrees clockwise from twelve (+y). */
export const clockDirection = (angle: Degrees): Direction => {
  const mirrored = direction(angle);
  return { x: mirrored.y, y: mirrored.x };
};

/** Unit vector at -45 .. 45 degrees, with the values that a square root gives exactly rounded. */
const nearAxis = (angle: number): Direction => {
  if (angle === 0) return { x: 1, y: 0 };
  const size = Math.abs(angle);
  const side = angle < 0 ? -1 : 1;
  if (size === 45) return { x: Math.sqrt(0.5), y: side * Math.sqrt(0.5) };
  if (size === 30) return { x: Math.sqrt(0.75), y: side * 0.5 };
  const inRadians = toRadians(degrees(angle));
  return { x: cosineNear(inRadians, 0), y: sineNear(inRadians, 0) };
};

const quarterTurned = (vector: Direction, quarter: number): Direction => {
  if (quarter === 0) return vector;
  if (quarter === 1) return { x: negated(vector.y), y: vector.x };
  if (quarter === 2) return { x: negated(vector.x), y: negated(vector.y) };
  return { x: vector.y, y: negated(vector.x) };
};

/** -value without a negative zero. */
const negated = (value: number): number => (value === 0 ? 0 : -value);

// pi and pi / 2 as doubles, and what each double leaves out (computed to 80 digits by Machin's formula).
const pi = Math.PI;
const piTail = 1.2246467991473532e-16;
const halfPi = Math.PI / 2;
const halfPiTail = 6.123233995736766e-17;

// pi / 2 in pieces of 33 bits, so that a count of up to 2^20 times a piece is exact (Cody and Waite's reduction).
const halfPiFirst = 1.5707963267341256;
const halfPiSecond = 6.077100506303966e-11;
const halfPiThird = 2.0222662487959506e-21;
const twoOverPi = 0.6366197723675814;
const largestQuarterCount = 1048576;

interface Reduced {
  readonly quarter: number;
  readonly rest: number;
  readonly tail: number;
}

/** The angle as quarters of a turn (0 .. 3) and a rest in -pi/4 .. pi/4, the rest in two doubles. */
const reduced = (angle: number): Reduced => {
  const count = Math.round(angle * twoOverPi);
  invariant(Math.abs(count) <= largestQuarterCount, "an angle stays below a million quarter turns");
  if (count === 0) return { quarter: 0, rest: angle, tail: 0 };
  const coarse = angle - count * halfPiFirst;
  const second = count * halfPiSecond;
  const middle = coarse - second;
  const lost = coarse - middle - second - count * halfPiThird;
  const rest = middle + lost;
  const quarter = ((count % 4) + 4) % 4;
  return { quarter, rest, tail: middle - rest + lost };
};

/** Taylor's series to x^17 on -pi/4 .. pi/4: the first term left out is below 4e-19. */
const sineNear = (angle: number, tail: number): number => {
  const square = angle * angle;
  let sum = 0;
  for (const factor of sineFactors) sum = factor + square * sum;
  return angle + (square * angle * sum + tail * (1 - square / 2));
};

/** Taylor's series to x^18 on -pi/4 .. pi/4; the rounding of 1 - x²/2 is carried along. */
const cosineNear = (angle: number, tail: number): number => {
  const square = angle * angle;
  let sum = 0;
  for (const factor of cosineFactors) sum = factor + square * sum;
  const half = square / 2;
  const main = 1 - half;
  return main + (1 - main - half + (square * square * sum - angle * tail));
};

/** 1 / 17! down to -1 / 3!, alternating; every factorial here is an exact double. */
const sineFactors: readonly number[] = [
  1 / 355687428096000,
  -1 / 1307674368000,
  1 / 6227020800,
  -1 / 39916800,
  1 / 362880,
  -1 / 5040,
  1 / 120,
  -1 / 6,
];

/** -1 / 18! up to 1 / 4!, alternating. */
const cosineFactors: readonly number[] = [
  -1 / 6402373705728000,
  1 / 20922789888000,
  -1 / 87178291200,
  1 / 479001600,
  -1 / 3628800,
  1 / 40320,
  -1 / 720,
  1 / 24,
];

/**
 * For 0 .. 1: the nearest eighth's arc tangent from a table, and a series for what is left, which is at most
 * 1/16: atan x = atan c + atan((x - c) / (1 + x c)).
 */
const arcTangentTo1 = (value: number): number => {
  const eighth = Math.round(value * 8);
  const start = eighth / 8;
  const rest = (value - start) / (1 + value * start);
  const square = rest * rest;
  let sum = 0;
  for (const factor of arcTangentFactors) sum = factor + square * sum;
  const small = rest + square * rest * sum;
  return arcTangentOfEighths[eighth]! + (small + arcTangentTails[eighth]!);
};

/** Factors of x^13 down to x^3; the first term left out is 2e-18 of the result. */
const arcTangentFactors: readonly number[] = [1 / 13, -1 / 11, 1 / 9, -1 / 7, 1 / 5, -1 / 3];

/** Arc tangents of 0/8 .. 8/8 (computed to 80 digits), as a double and what the double leaves out. */
const arcTangentOfEighths: readonly number[] = [
  0, 0.12435499454676144, 0.24497866312686414, 0.35877067027057225, 0.4636476090008061,
  0.5585993153435624, 0.6435011087932844, 0.7188299996216245, 0.7853981633974483,
];
const arcTangentTails: readonly number[] = [
  0, -3.1253241424539383e-18, 1.0698755618734451e-17, -2.4623815582638635e-17,
  2.2698777452961687e-17, -5.4556305485916264e-18, 1.5834785051444286e-17, -2.1478388444456983e-17,
  3.061616997868383e-17,
];
