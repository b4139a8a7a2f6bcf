// Triangles as a file carries them: float32 corners, each place once, outside seen counter-clockwise.
// Volume and box are measured on the float32 corners themselves.

import { mm } from "../quantity.ts";
import type { SolidExtent } from "./recipe-extent.ts";

export interface Mesh {
  /** x, y, z of each corner, in millimetres. */
  readonly positions: Float32Array;
  /** Three corners a triangle. */
  readonly triangles: Uint32Array;
}

export const triangleCount = (mesh: Mesh): number => mesh.triangles.length / 3;

/** In mm³, positive where the triangles face outward. */
export const meshVolume = ({ positions, triangles }: Mesh): number => {
  let six = 0;
  for (let at = 0; at < triangles.length; at += 3) {
    const a = triangles[at]! * 3;
    const b = triangles[at + 1]! * 3;
    const c = triangles[at + 2]! * 3;
    const crossX = positions[b + 1]! * positions[c + 2]! - positions[b + 2]! * positions[c + 1]!;
    const crossY = positions[b + 2]! * positions[c]! - positions[b]! * positions[c + 2]!;
    const crossZ = positions[b]! * positions[c + 1]! - positions[b + 1]! * positions[c]!;
    six += positions[a]! * crossX + positions[a + 1]! * crossY + positions[a + 2]! * crossZ;
  }
  return six / 6;
};

export const meshExtent = ({ positions }: Mesh): SolidExtent => {
  const least = [Infinity, Infinity, Infinity];
  const most = [-Infinity, -Infinity, -Infinity];
  for (const [index, value] of positions.entries()) {
    const axis = index % 3;
    least[axis] = Math.min(least[axis]!, value);
    most[axis] = Math.max(most[axis]!, value);
  }
  return {
    minX: mm(least[0]!),
    minY: mm(least[1]!),
    minZ: mm(least[2]!),
    maxX: mm(most[0]!),
    maxY: mm(most[1]!),
    maxZ: mm(most[2]!),
  };
};
