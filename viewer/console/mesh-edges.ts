// The lines of a mesh where it turns by more than 30 degrees: two points each, one after the other.

import type { Mesh } from "../../src/geometry/solid/mesh.ts";

const SHARP = Math.cos(Math.PI / 6);

export const meshEdges = ({ positions, triangles }: Mesh): Float32Array => {
  const open = new Map<string, number>();
  const lines: number[] = [];
  for (let triangle = 0; triangle < triangles.length / 3; triangle += 1)
    for (let side = 0; side < 3; side += 1) {
      const from = triangles[3 * triangle + side]!;
      const to = triangles[3 * triangle + ((side + 1) % 3)]!;
      const other = open.get(`${to} ${from}`);
      if (other === undefined) open.set(`${from} ${to}`, triangle);
      else {
        open.delete(`${to} ${from}`);
        if (cosineBetween({ positions, triangles }, triangle, other) < SHARP) lines.push(from, to);
      }
    }
  // What only one triangle has is an edge of a sheet without thickness.
  for (const key of open.keys()) lines.push(...key.split(" ").map(Number));
  return Float32Array.from(
    lines.flatMap((corner) => [...positions.subarray(3 * corner, 3 * corner + 3)]),
  );
};

const cosineBetween = (mesh: Mesh, one: number, other: number): number => {
  const [a, b] = [normalOf(mesh, one), normalOf(mesh, other)];
  const lengths = Math.hypot(...a) * Math.hypot(...b);
  return lengths === 0 ? 1 : (a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) / lengths;
};

const normalOf = ({ positions, triangles }: Mesh, at: number): [number, number, number] => {
  const corner = (index: number): number => 3 * triangles[3 * at + index]!;
  const [a, b, c] = [corner(0), corner(1), corner(2)];
  const side = (to: number, axis: number): number => positions[to + axis]! - positions[a + axis]!;
  const [ux, uy, uz] = [side(b, 0), side(b, 1), side(b, 2)];
  const [vx, vy, vz] = [side(c, 0), side(c, 1), side(c, 2)];
  return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
};
