// A convex body by its corners, in the frame of the recipe that it is a piece of. What a body is searched with for its
// nearest neighbour: kernel-free, and light enough for a drag.

import type { Contour } from "../../geometry/contour.ts";
import { boxRound, type SpaceBox } from "../../geometry/space/space-box.ts";
import { type Vector, vector } from "../../geometry/space/vector.ts";

export interface ConvexPiece {
  /** x, y, z of each corner. Corners within the hull do no harm. */
  readonly corners: Float64Array;
  readonly box: SpaceBox;
  readonly middle: Vector;
  readonly filling: Filling;
}

/**
 * What of the piece is material. `solid`: all of it. `outline`: seen along z what lies in the outline and in no opening, and
 * nothing of what lies in a hollow; in an opening that is none something may stand. `unknown`: nobody knows without the kernel.
 */
export type Filling =
  | { readonly kind: "solid" }
  | {
      readonly kind: "outline";
      readonly outline: Contour;
      readonly openings: readonly Contour[];
      readonly hollows: readonly Contour[];
    }
  | { readonly kind: "unknown" };

export const convexPiece = (points: readonly Vector[], filling: Filling): ConvexPiece => {
  const corners = new Float64Array(points.length * 3);
  for (const [index, { x, y, z }] of points.entries()) corners.set([x, y, z], 3 * index);
  const box = boxRound(points);
  const middle = vector(
    (box.minX + box.maxX) / 2,
    (box.minY + box.maxY) / 2,
    (box.minZ + box.maxZ) / 2,
  );
  return { corners, box, middle, filling };
};

/** The piece with every face of its box moved inward by a length; faces aslant move about as far. */
export const shrunkPiece = (piece: ConvexPiece, by: number): ConvexPiece => {
  const { corners, box, middle } = piece;
  const kept = [
    keptShare(box.maxX - box.minX, by),
    keptShare(box.maxY - box.minY, by),
    keptShare(box.maxZ - box.minZ, by),
  ];
  const centre = [middle.x, middle.y, middle.z];
  const shrunk = corners.map((value, index) => {
    const axis = index % 3;
    return centre[axis]! + (value - centre[axis]!) * kept[axis]!;
  });
  return { ...piece, corners: shrunk };
};

/** Of a size that loses a length at either end; of one that has less, nothing. */
const keptShare = (size: number, by: number): number =>
  size > 2 * by ? (size - 2 * by) / size : 0;
