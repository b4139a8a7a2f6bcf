// The least tilt at which a panel comes out with one end lifted first. Seen from its side everything is an upright box first
// (y along the panel, z outward) that the turn sets askew; two such boxes are apart where one of their four sides tells
// them apart. Where they are not, what they stand for is asked, which takes a hundred times as long.
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

/** Where the panel is: turned about its hinge, positive with its high end up, and on its way from there. */
export interface TiltedPlace {
  readonly by: Degrees;
  readonly sweep: Sweep;
}

/** `none`: it stands there. `outward`: along its tilted normal. `along`: in its own plane, toward the end that is lifted. */
export type Sweep = "none" | "outward" | "along";

export interface SidePair {
  readonly moving: SideBox;
  readonly still: SideBox;
  /** Whether what the two boxes stand for meets there. */
  readonly meets: (place: TiltedPlace) => boolean;
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
  /** Of bodies whose boxes overlap from the beginning: whether material that was apart then meets there. */
  readonly others: readonly SidePair["meets"][];
}

const STEP = 0.25;
export const MOST_TILT = 45;

export const leastTilt = (tilting: Tilting): Degrees | null => {
  const hinge = hingeOf(tilting);
  const pairs = tilting.pairs.map(({ moving, still, meets }) => ({
    moving: shifted(moving, hinge),
    still: shifted(still, hinge),
    meets,
  }));
  const sweeps = sweepsOf(tilting);
  for (let tilt = STEP; tilt <= MOST_TILT; tilt += STEP) {
    const by = degrees(tilting.first === "high-end" ? tilt : -tilt);
    const turned = direction(by);
    const isFree = (sweep: Sweep): boolean =>
      pairs.every(
        ({ moving, still, meets }) =>
          !meet(sweeps[sweep](moving), still, turned) || !meets({ by, sweep }),
      ) && tilting.others.every((meets) => !meets({ by, sweep }));
    if (!isFree("none")) return null;
    if (isFree("outward") || (tilting.slides && isFree("along"))) return degrees(tilt);
  }
  return null;
};

/** Where along the panel it turns: the end that stays. */
export const hingeOf = ({ first, low, high }: Pick<Tilting, "first" | "low" | "high">): number =>
  first === "high-end" ? low : high;

/** How far it is moved in its own plane: as far as the panel is long, then the end that stayed has left its place. */
export const slideOf = ({ first, low, high }: Pick<Tilting, "first" | "low" | "high">): number =>
  first === "high-end" ? high - low : low - high;

const shifted = (box: SideBox, by: number): SideBox => ({
  ...box,
  minY: box.minY - by,
  maxY: box.maxY - by,
});

const sweepsOf = (tilting: Tilting): Readonly<Record<Sweep, (box: SideBox) => SideBox>> => {
  const slide = slideOf(tilting);
  return {
    none: (box) => box,
    outward: (box) => ({ ...box, maxZ: box.maxZ + tilting.travel }),
    along: (box) => ({
      ...box,
      minY: box.minY + Math.min(slide, 0),
      maxY: box.maxY + Math.max(slide, 0),
    }),
  };
};

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
