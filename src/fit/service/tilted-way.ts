// The least tilt at which a panel comes out with one end lifted first, seen from its side: everything is an upright box
// (y along the panel, z outward) that the turn sets askew. Two such boxes are apart where one of their four sides tells
// them apart, which is exact.
//
// The panel turns about the edge of its front at the end that stays, a quarter of a degree at a time up to 45 degrees, and
// must be free at every step. A step moves what is 300 mm from the hinge by 1.3 mm: less than any two things that could
// pass through one another are thick together. From every tilt it is tried straight along the tilted normal, and, where
// its fasteners are taken out first, slid along itself toward the lifted end: studs that stay in a panel hold it there.

import { type Degrees, degrees } from "../../geometry/quantity.ts";
import { type Direction, direction } from "../../geometry/trigonometry.ts";
import { wayTouch } from "../fit-tolerance.ts";

/** What a box is from the side. */
export interface SideBox {
  readonly minY: number;
  readonly maxY: number;
  readonly minZ: number;
  readonly maxZ: number;
}

export interface SidePair {
  readonly moving: SideBox;
  readonly still: SideBox;
}

export interface Tilting {
  /** Which end is lifted; the other is the hinge. */
  readonly first: "low-end" | "high-end";
  readonly low: number;
  readonly high: number;
  /** How far it is pulled out. */
  readonly travel: number;
  /** Nothing that stays in it is sunk in what it lies on. */
  readonly slides: boolean;
  readonly pairs: readonly SidePair[];
}

const STEP = 0.25;
export const MOST_TILT = 45;

export const leastTilt = (tilting: Tilting): Degrees | null => {
  const hinge = tilting.first === "high-end" ? tilting.low : tilting.high;
  const pairs = tilting.pairs.map(({ moving, still }) => ({
    moving: shifted(moving, hinge),
    still: shifted(still, hinge),
  }));
  for (let tilt = STEP; tilt <= MOST_TILT; tilt += STEP) {
    const turned = direction(degrees(tilting.first === "high-end" ? tilt : -tilt));
    const isFree = (sweep: (box: SideBox) => SideBox): boolean =>
      pairs.every(({ moving, still }) => !meet(sweep(moving), still, turned));
    if (!isFree((box) => box)) return null;
    if (isFree(outward(tilting)) || (tilting.slides && isFree(alongItself(tilting))))
      return degrees(tilt);
  }
  return null;
};

const shifted = (box: SideBox, by: number): SideBox => ({
  ...box,
  minY: box.minY - by,
  maxY: box.maxY - by,
});

const outward =
  ({ travel }: Tilting) =>
  (box: SideBox): SideBox => ({ ...box, maxZ: box.maxZ + travel });

/** As far as the panel is long: then the end that stayed has left its place. */
const alongItself =
  ({ first, low, high }: Tilting) =>
  (box: SideBox): SideBox =>
    first === "high-end"
      ? { ...box, maxY: box.maxY + high - low }
      : { ...box, minY: box.minY - (high - low) };

/** The moving box turned about the hinge, which is at y = 0, z = 0. */
const meet = (moving: SideBox, still: SideBox, turn: Direction): boolean =>
  overlap(boxTurned(moving, turn), still) &&
  overlap(boxTurned(still, { x: turn.x, y: -turn.y }), moving);

const overlap = (a: SideBox, b: SideBox): boolean =>
  a.minY < b.maxY - wayTouch &&
  b.minY < a.maxY - wayTouch &&
  a.minZ < b.maxZ - wayTouch &&
  b.minZ < a.maxZ - wayTouch;

const boxTurned = (
  { minY, maxY, minZ, maxZ }: SideBox,
  { x: cosine, y: sine }: Direction,
): SideBox => {
  const acrossY = [minY * cosine, maxY * cosine];
  const acrossZ = [-minZ * sine, -maxZ * sine];
  const upY = [minY * sine, maxY * sine];
  const upZ = [minZ * cosine, maxZ * cosine];
  return {
    minY: Math.min(...acrossY) + Math.min(...acrossZ),
    maxY: Math.max(...acrossY) + Math.max(...acrossZ),
    minZ: Math.min(...upY) + Math.min(...upZ),
    maxZ: Math.max(...upY) + Math.max(...upZ),
  };
};
