// Vectors in space, in millimetres or as bare directions. Takes vectors, gives new ones.

import { invariant } from "../invariant.ts";

export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const vector = (x: number, y: number, z: number): Vector => ({ x, y, z });

export const plus = (a: Vector, b: Vector): Vector => vector(a.x + b.x, a.y + b.y, a.z + b.z);

export const minus = (a: Vector, b: Vector): Vector => vector(a.x - b.x, a.y - b.y, a.z - b.z);

export const scaled = (a: Vector, by: number): Vector => vector(a.x * by, a.y * by, a.z * by);

export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;

export const cross = (a: Vector, b: Vector): Vector =>
  vector(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);

export const vectorLength = (a: Vector): number => Math.sqrt(dot(a, a));

export const spaceDistance = (a: Vector, b: Vector): number => vectorLength(minus(a, b));

/** The unit vector of the same direction; the vector is not zero. */
export const unitVector = (a: Vector): Vector => {
  const length = vectorLength(a);
  invariant(length > 0, "a direction is asked of a vector that has one");
  return scaled(a, 1 / length);
};
