// Does every edge of a mesh belong to two triangles that run along it in opposite directions? A quick yes or no, for
// choosing between two meshers; the inspection counts what is wrong with code of its own.

import type { Mesh } from "./mesh.ts";

export const isClosed = ({ positions, triangles }: Mesh): boolean => {
  const count = positions.length / 3;
  const edges = new Set<number>();
  for (let at = 0; at < triangles.length; at += 3) {
    for (let side = 0; side < 3; side += 1) {
      const edge = triangles[at + side]! * count + triangles[at + ((side + 1) % 3)]!;
      if (edges.has(edge)) return false;
      edges.add(edge);
    }
  }
  for (const edge of edges) {
    const from = Math.floor(edge / count);
    if (!edges.has((edge - from * count) * count + from)) return false;
  }
  return edges.size > 0;
};
