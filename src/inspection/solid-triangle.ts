// One triangle of a read solid: its corners, its normal (twice its area long), its height over its longest side.

import type { SolidBody } from "./solid-file.ts";

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export type TrianglePoints = readonly [Place, Place, Place];

/** The triangle whose three corners start at `at` in the body's list. */
export const trianglePoints = ({ corners, triangles }: SolidBody, at: number): TrianglePoints => {
  const place = (index: number): Place => {
    const first = 3 * triangles[index]!;
    return { x: corners[first]!, y: corners[first + 1]!, z: corners[first + 2]! };
  };
  return [place(at), place(at + 1), place(at + 2)];
};

export const normalOf = ([a, b, c]: TrianglePoints): Place => {
  const u = minus(b, a);
  const v = minus(c, a);
  return { x: u.y * v.z - u.z * v.y, y: u.z * v.x - u.x * v.z, z: u.x * v.y - u.y * v.x };
};

/** 0 where two corners are one. */
export const heightOf = (points: TrianglePoints): number => {
  const [a, b, c] = points;
  const longest = Math.max(size(minus(b, a)), size(minus(c, b)), size(minus(a, c)));
  return longest === 0 ? 0 : size(normalOf(points)) / longest;
};

/** Six times the volume between the triangle and the origin. */
export const sixfoldVolume = ([a, b, c]: TrianglePoints): number =>
  a.x * (b.y * c.z - b.z * c.y) + a.y * (b.z * c.x - b.x * c.z) + a.z * (b.x * c.y - b.y * c.x);

const minus = (a: Place, b: Place): Place => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });

const size = ({ x, y, z }: Place): number => Math.sqrt(x * x + y * y + z * z);
