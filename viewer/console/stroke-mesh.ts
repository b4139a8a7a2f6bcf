// A stroke of a marking as flat quads along its chords, as wide as it is drawn.

import type { Path } from "../../src/geometry/contour.ts";
import { flattenedPath } from "../../src/geometry/flatten.ts";
import type { GrowingLot } from "./low-mesh.ts";

const CHORD = 0.1;

export const addStroke = (
  lot: GrowingLot,
  { path, width }: { readonly path: Path; readonly width: number },
  height: number,
): void => {
  const corners = flattenedPath(path, CHORD);
  for (const [index, from] of corners.slice(0, -1).entries()) {
    const to = corners[index + 1]!;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length === 0) continue;
    const [x, y] = [
      ((from.y - to.y) / length) * (width / 2),
      ((to.x - from.x) / length) * (width / 2),
    ];
    const first = lot.positions.length / 3;
    lot.positions.push(from.x + x, from.y + y, height, from.x - x, from.y - y, height);
    lot.positions.push(to.x - x, to.y - y, height, to.x + x, to.y + y, height);
    lot.triangles.push(first, first + 1, first + 2, first, first + 2, first + 3);
  }
};
