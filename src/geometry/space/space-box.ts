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
  const middle = pointOut(
    frame,
    vector((box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2, (box.minZ + box.maxZ) / 2),
  );
  const [x, y, z] = [
    (box.maxX - box.minX) / 2,
    (box.maxY - box.minY) / 2,
    (box.maxZ - box.minZ) / 2,
  ];
  const half = (along: "x" | "y" | "z"): number =>
    Math.abs(frame.x[along]) * x + Math.abs(frame.y[along]) * y + Math.abs(frame.z[along]) * z;
  const [halfX, halfY, halfZ] = [half("x"), half("y"), half("z")];
  return {
    minX: mm(middle.x - halfX),
    minY: mm(middle.y - halfY),
    minZ: mm(middle.z - halfZ),
    maxX: mm(middle.x + halfX),
    maxY: mm(middle.y + halfY),
    maxZ: mm(middle.z + halfZ),
  };
};

/** The distance between two boxes; 0 where they meet. */
export const boxGap = (a: SpaceBox, b: SpaceBox): Mm => {
  const x = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const y = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  const z = Math.max(0, a.minZ - b.maxZ, b.minZ - a.maxZ);
  return mm(Math.sqrt(x * x + y * y + z * z));
};
