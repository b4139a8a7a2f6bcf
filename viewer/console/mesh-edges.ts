// The lines of a mesh where it turns by more than 30 degrees: two points each, one after the other.

import type { Mesh } from "../../src/geometry/solid/mesh.ts";

const SHARP = Math.cos(Math.PI / 6);

export const meshEdges = ({ positions, triangles }: Mesh): Float32Array => {
  const normals = normalsOf({ positions, triangles });
  const { waiting, taken } = openSides(positions.length / 3, triangles);
  const lines: number[] = [];
  for (let side = 0; side < triangles.length; side += 1) {
    const other = taken(side);
    if (other === -1) continue;
    if (cosineBetween(normals, Math.floor(side / 3), Math.floor(other / 3)) < SHARP)
      lines.push(triangles[side]!, triangles[endOf(side)]!);
  }
  // What only one triangle has is an edge of a sheet without thickness.
  for (let side = 0; side < triangles.length; side += 1)
    if (waiting[side] === 1) lines.push(triangles[side]!, triangles[endOf(side)]!);
  const points = new Float32Array(3 * lines.length);
  for (let index = 0; index < lines.length; index += 1)
    for (let axis = 0; axis < 3; axis += 1)
      points[3 * index + axis] = positions[3 * lines[index]! + axis]!;
  return points;
};

/** The side of a triangle that begins where this one ends, each side named by where its first corner stands in the list. */
const endOf = (side: number): number => (side % 3 === 2 ? side - 2 : side + 1);

/**
 * Sides that still wait for the one that runs back along them, in a row for each corner that they begin at. `taken`: the one that
 * waited for this side, or -1, and this one waits. A million sides by name, as words or as numbers, took a second and more.
 */
const openSides = (
  corners: number,
  triangles: Uint32Array,
): { readonly waiting: Uint8Array; readonly taken: (side: number) => number } => {
  const waiting = new Uint8Array(triangles.length);
  const first = new Int32Array(corners).fill(-1);
  const next = new Int32Array(triangles.length).fill(-1);
  const taken = (side: number): number => {
    const [from, to] = [triangles[side]!, triangles[endOf(side)]!];
    let before = -1;
    for (let other = first[to]!; other !== -1; other = next[other]!) {
      if (triangles[endOf(other)] === from) {
        if (before === -1) first[to] = next[other]!;
        else next[before] = next[other]!;
        waiting[other] = 0;
        return other;
      }
      before = other;
    }
    next[side] = first[from]!;
    first[from] = side;
    waiting[side] = 1;
    return -1;
  };
  return { waiting, taken };
};

/** Of two faces by their normals; a face without any is flat with every other. */
const cosineBetween = (normals: Float64Array, one: number, other: number): number => {
  const [a, b] = [3 * one, 3 * other];
  const product = (left: number, right: number): number =>
    normals[left]! * normals[right]! +
    normals[left + 1]! * normals[right + 1]! +
    normals[left + 2]! * normals[right + 2]!;
  const lengths = Math.sqrt(product(a, a) * product(b, b));
  return lengths === 0 ? 1 : product(a, b) / lengths;
};

/** Three numbers a triangle, as long as it is large. */
const normalsOf = ({ positions, triangles }: Mesh): Float64Array => {
  const normals = new Float64Array(triangles.length);
  for (let at = 0; at < triangles.length; at += 3) {
    const [a, b, c] = [3 * triangles[at]!, 3 * triangles[at + 1]!, 3 * triangles[at + 2]!];
    const side = (to: number, axis: number): number => positions[to + axis]! - positions[a + axis]!;
    const [ux, uy, uz] = [side(b, 0), side(b, 1), side(b, 2)];
    const [vx, vy, vz] = [side(c, 0), side(c, 1), side(c, 2)];
    normals[at] = uy * vz - uz * vy;
    normals[at + 1] = uz * vx - ux * vz;
    normals[at + 2] = ux * vy - uy * vx;
  }
  return normals;
};
