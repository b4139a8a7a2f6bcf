// Boxes parallel to the axes of space, in millimetres: the first, coarse answer to what can meet what.

import { type Mm, mm } from "../quantity.ts";
import { recipeExtent, type SolidExtent } from "../solid/recipe-extent.ts";
import type { Solid } from "../solid/solid.ts";
import { type Frame, pointOut } from "./frame.ts";
import { type Vector, vector } from "./vector.ts";

export type SpaceBox = SolidExtent;

/** The box round a solid in its frame; it holds the turned corners of the solid's own box, so it may be larger than need be. */
export const boxInFrame = (solid: Solid, frame: Frame): SpaceBox =>
  boxRound(boxCorners(recipeExtent(solid)).map((corner) => pointOut(frame, corner)));

export const boxCorners = (box: SpaceBox): readonly Vector[] =>
  [box.minX, box.maxX].flatMap((x) =>
    [box.minY, box.maxY].flatMap((y) => [box.minZ, box.maxZ].map((z) => vector(x, y, z))),
  );

/** The smallest box that holds all of them; there is at least one. */
export const boxRound = (points: readonly Vector[]): SpaceBox => {
  let [minX, minY, minZ] = [Infinity, Infinity, Infinity];
  let [maxX, maxY, maxZ] = [-Infinity, -Infinity, -Infinity];
  for (const { x, y, z } of points) {
    if (x < minX) minX = x;
    if (y < minY) minY = y;
    if (z < minZ) minZ = z;
    if (x > maxX) maxX = x;
    if (y > maxY) maxY = y;
    if (z > maxZ) maxZ = z;
  }
  return {
    minX: mm(minX),
    minY: mm(minY),
    minZ: mm(minZ),
    maxX: mm(maxX),
    maxY: mm(maxY),
    maxZ: mm(maxZ),
  };
};

export const joinedBox = (a: SpaceBox, b: SpaceBox): SpaceBox => ({
  minX: mm(Math.min(a.minX, b.minX)),
  minY: mm(Math.min(a.minY, b.minY)),
  minZ: mm(Math.min(a.minZ, b.minZ)),
  maxX: mm(Math.max(a.maxX, b.maxX)),
  maxY: mm(Math.max(a.maxY, b.maxY)),
  maxZ: mm(Math.max(a.maxZ, b.maxZ)),
});

/** The box round a box of a frame, seen from outside: no smaller, and as large as its turned corners. */
export const boxOut = (frame: Frame, box: SpaceBox): SpaceBox => {
  putBoxOut(frame, box, { into: OUT, at: 0 });
  const [minX, minY, minZ, maxX, maxY, maxZ] = OUT;
  return {
    minX: mm(minX!),
    minY: mm(minY!),
    minZ: mm(minZ!),
    maxX: mm(maxX!),
    maxY: mm(maxY!),
    maxZ: mm(maxZ!),
  };
};

/**
 * Written over by each call and read before it returns: nothing in between calls anything that could come back here. A list made
 * at each call was a part of what took a step of a drag from 13.0 to 6.6 ms of processor.
 */
const OUT = new Float64Array(6);

/** The same as six numbers, in the order of their names: for whoever looks at thousands of boxes once. */
export const putBoxOut = (
  { x, y, z, origin }: Frame,
  box: SpaceBox,
  { into, at }: { readonly into: Float64Array; readonly at: number },
): void => {
  const midX = (box.minX + box.maxX) / 2;
  const midY = (box.minY + box.maxY) / 2;
  const midZ = (box.minZ + box.maxZ) / 2;
  const halfX = (box.maxX - box.minX) / 2;
  const halfY = (box.maxY - box.minY) / 2;
  const halfZ = (box.maxZ - box.minZ) / 2;
  const atX = origin.x + (x.x * midX + y.x * midY + z.x * midZ);
  const atY = origin.y + (x.y * midX + y.y * midY + z.y * midZ);
  const atZ = origin.z + (x.z * midX + y.z * midY + z.z * midZ);
  const wideX = Math.abs(x.x) * halfX + Math.abs(y.x) * halfY + Math.abs(z.x) * halfZ;
  const wideY = Math.abs(x.y) * halfX + Math.abs(y.y) * halfY + Math.abs(z.y) * halfZ;
  const wideZ = Math.abs(x.z) * halfX + Math.abs(y.z) * halfY + Math.abs(z.z) * halfZ;
  into[at] = atX - wideX;
  into[at + 1] = atY - wideY;
  into[at + 2] = atZ - wideZ;
  into[at + 3] = atX + wideX;
  into[at + 4] = atY + wideY;
  into[at + 5] = atZ + wideZ;
};

/** The distance between a box and one of six numbers. */
export const gapToBoxAt = (box: SpaceBox, boxes: Float64Array, at: number): Mm => {
  const x = Math.max(0, box.minX - boxes[at + 3]!, boxes[at]! - box.maxX);
  const y = Math.max(0, box.minY - boxes[at + 4]!, boxes[at + 1]! - box.maxY);
  const z = Math.max(0, box.minZ - boxes[at + 5]!, boxes[at + 2]! - box.maxZ);
  return mm(Math.sqrt(x * x + y * y + z * z));
};

/** The distance between two boxes; 0 where they meet. */
export const boxGap = (a: SpaceBox, b: SpaceBox): Mm => {
  const x = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const y = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  const z = Math.max(0, a.minZ - b.maxZ, b.minZ - a.maxZ);
  return mm(Math.sqrt(x * x + y * y + z * z));
};
