// How far a point lies from the surface of a mesh; never negative, so that a point within is as far as the nearest wall.

import { type Mm, mm } from "../quantity.ts";
import {
  cross,
  dot,
  minus,
  plus,
  scaled,
  type Vector,
  vector,
  vectorLength,
} from "../space/vector.ts";
import type { Mesh } from "./mesh.ts";

export const meshDistance = ({ positions, triangles }: Mesh, at: Vector): Mm => {
  const corner = (index: number): Vector => {
    const first = triangles[index]! * 3;
    return vector(positions[first]!, positions[first + 1]!, positions[first + 2]!);
  };
  let near = Infinity;
  for (let index = 0; index < triangles.length; index += 3) {
    const far = triangleDistance([corner(index), corner(index + 1), corner(index + 2)], at);
    if (far < near) near = far;
  }
  return mm(near);
};

type Triangle = readonly [Vector, Vector, Vector];

const triangleDistance = ([a, b, c]: Triangle, at: Vector): number => {
  const normal = cross(minus(b, a), minus(c, a));
  const size = vectorLength(normal);
  const sides: readonly (readonly [Vector, Vector])[] = [
    [a, b],
    [b, c],
    [c, a],
  ];
  const isOver =
    size > 0 &&
    sides.every(([from, to]) => dot(cross(normal, minus(to, from)), minus(at, from)) >= 0);
  return isOver
    ? Math.abs(dot(normal, minus(at, a))) / size
    : Math.min(...sides.map(([from, to]) => edgeDistance(from, to, at)));
};

const edgeDistance = (from: Vector, to: Vector, at: Vector): number => {
  const along = minus(to, from);
  const square = dot(along, along);
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, dot(minus(at, from), along) / square));
  return vectorLength(minus(at, plus(from, scaled(along, share))));
};
