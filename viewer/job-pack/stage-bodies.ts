// The bodies of a file that was read, ready to be drawn: corners of triangles one after the other, and lines where edges are.

import type { SolidBody } from "../../src/inspection/solid-file.ts";
import { meshEdges } from "../console/mesh-edges.ts";
import type { ReadSolids } from "./read-solids.ts";
import { drawnStep } from "./step-triangles.ts";

export interface StageBody {
  /** Three numbers a corner, three corners a triangle. */
  readonly corners: Float32Array;
  /** One a corner; null: each triangle is flat. */
  readonly normals: Float32Array | null;
  /** Two places a line. */
  readonly lines: Float32Array;
}

export interface StageBodies {
  readonly bodies: readonly StageBody[];
  /** Faces that are drawn by their edges alone. */
  readonly undrawn: number;
}

export const stageBodies = (read: ReadSolids): StageBodies => {
  switch (read.kind) {
    case "meshes":
      return { bodies: read.bodies.map(meshBody), undrawn: 0 };
    case "exact": {
      const bodies = read.solids.map(drawnStep);
      return { bodies, undrawn: bodies.reduce((count, { undrawn }) => count + undrawn, 0) };
    }
  }
};

/** Each triangle with corners of its own, so that edges stay sharp. */
const meshBody = ({ corners, triangles }: SolidBody): StageBody => {
  const positions = Float32Array.from(corners);
  const own = new Float32Array(3 * triangles.length);
  for (const [index, corner] of triangles.entries())
    own.set(positions.subarray(3 * corner, 3 * corner + 3), 3 * index);
  const lines = meshEdges({ positions, triangles: Uint32Array.from(triangles) });
  return { corners: own, normals: null, lines };
};
