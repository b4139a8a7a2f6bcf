// Turning in space: about x, then y, then z, as a matrix of nine numbers row by row. Exact at quarter turns.

import type { Degrees } from "../quantity.ts";
import { dot, type Vector } from "../space/vector.ts";
import { direction } from "../trigonometry.ts";

export interface Turn {
  readonly x: Degrees;
  readonly y: Degrees;
  readonly z: Degrees;
}

/** The unit vectors that x, y and z become. */
export interface TurnMatrix {
  readonly x: Vector;
  readonly y: Vector;
  readonly z: Vector;
}

export const turnMatrix = (turn: Turn): TurnMatrix => {
  const aboutX = direction(turn.x);
  const aboutY = direction(turn.y);
  const aboutZ = direction(turn.z);
  const turned = ({ x, y, z }: Vector): Vector => {
    const y1 = y * aboutX.x - z * aboutX.y;
    const z1 = y * aboutX.y + z * aboutX.x;
    const x2 = x * aboutY.x + z1 * aboutY.y;
    const z2 = z1 * aboutY.x - x * aboutY.y;
    return { x: x2 * aboutZ.x - y1 * aboutZ.y, y: x2 * aboutZ.y + y1 * aboutZ.x, z: z2 };
  };
  return {
    x: turned({ x: 1, y: 0, z: 0 }),
    y: turned({ x: 0, y: 1, z: 0 }),
    z: turned({ x: 0, y: 0, z: 1 }),
  };
};

/** The vector that the turn brings to `vector`. */
export const turnedBack = (matrix: TurnMatrix, vector: Vector): Vector => ({
  x: dot(matrix.x, vector),
  y: dot(matrix.y, vector),
  z: dot(matrix.z, vector),
});
