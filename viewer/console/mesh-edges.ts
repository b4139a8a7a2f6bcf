// The lines of a mesh where it turns by more than 30 degrees: two points each, one after the other.

import type { Mesh } from "../../src/geometry/solid/mesh.ts";

const SHARP = Math.cos(Math.PI / 6);

export const meshEdges = ({ positions, triangles }: Mesh): Float32Array => {
  const corners = positions.length / 3;
  const normals = normalsOf({ positions, triangles });
  // An edge by one number: a million of words for a console's model took 3 s of 5.
  const open = new Map<number, number>();
  const lines: number[] = [];
  for (let triangle = 0; triangle < triangles.length / 3; triangle += 1)
    for (let side = 0; side < 3; side += 1) {
      const from = triangles[3 * triangle + side]!;
      const to = triangles[3 * triangle + ((side + 1) % 3)]!;
      const back = to * corners + from;
      const other = open.get(back);
      if (other === undefined) open.set(from * corners + to, triangle);
      else {
        open.delete(back);
        if (cosineBetween(normals, triangle, other) < SHARP) lines.push(from, to);
      }
    }
  // What only one triangle has is an edge of a sheet without thickness.
  for (const edge of open.keys()) lines.push(Math.floor(edge / corners), edge % corners);
  const points = new Float32Array(3 * lines.length);
  for (const [index, corner] of lines.entries())
    points.set(positions.subarray(3 * corner, 3 * corner + 3), 3 * index);
  return points;
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
