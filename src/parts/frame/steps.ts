// Where a bay stands over or under the one before it in a step: the strip that closes it, along the end of the higher one, and
// the line beyond it at which the cheeks' edges run.

import type { Point } from "../../geometry/contour.ts";
import { dot, vector } from "../../geometry/space/vector.ts";
import type { Direction } from "../../geometry/trigonometry.ts";
import type { Board } from "./board.ts";
import { type FrameBay, faceHeight, inBay } from "./frame-bay.ts";
import { endWeb, GAP } from "./frame-practice.ts";
import { nearlySideBySide, offPlane } from "./frame-tolerance.ts";
import type { PlanOptions } from "./plan-options.ts";
import { between, leftOf, stepped } from "./profile.ts";

export interface Line {
  readonly at: Point;
  readonly along: Direction;
}

type StepOptions = Pick<PlanOptions, "design" | "thickness" | "across">;

/**
 * The cheeks' edge beyond a strip between two bays that turns off steeply from either of them; null where it goes on. It stands
 * `beyond` before the strip's good face. Over what is dropped in it stands no farther than that allows: half-lapped ribs come
 * down straight, and the last stands a web from its bay's end; rails of a canted bay come down askew.
 */
export const stepEdge = (
  { at, along }: Pick<Board, "at" | "along">,
  [before, after]: readonly [FrameBay, FrameBay],
  options: StepOptions,
): Line | null => {
  const { design, thickness } = options;
  if (!isSteep(along, [before, after])) return null;
  const left = leftOf(along);
  const below = [
    ...(isAskew(before) && turn(before.along, along) > 0
      ? [freeOver(before, before.length, options)]
      : []),
    ...(isAskew(after) && turn(along, after.along) > 0 ? [freeOver(after, 0, options)] : []),
  ].map(({ x, y }) => (x - at.x) * left.x + (y - at.y) * left.y);
  const ribs = design.joints === "half-lap" ? [endWeb(thickness) - design.clearance] : [];
  const out = Math.min(design.beyond, ...ribs, ...below.map((past) => Math.max(0, past)));
  return { at: stepped(at, left, out), along };
};

const isSteep = (along: Direction, bays: readonly [FrameBay, FrameBay]): boolean =>
  bays.some((bay) => cosine(bay.along, along) < STEP);

/** As high over the end of a bay as a cheek may stand there, by which its rails come down: `beyond`, where it lies lowest. */
const freeOver = (bay: FrameBay, end: number, { design, across }: StepOptions): Point =>
  inBay(
    bay,
    end,
    Math.min(faceHeight(bay, across.from), faceHeight(bay, across.to)) + design.beyond,
  );

/** Positive where the second turns off to the left of the first. */
const turn = (one: Direction, other: Direction): number => one.x * other.y - one.y * other.x;

export const isAskew = ({ tilt }: FrameBay): boolean => Math.abs(tilt.y) > offPlane;

/**
 * Between two bays that lie apart: straight. Where that is a step and rails come down askew at its foot, it stands so much steeper
 * that a cheek finds room before its good face without standing over them; it ends at the higher bay.
 */
export const straightRun = (
  before: FrameBay,
  after: FrameBay,
  options: StepOptions,
): readonly [Point, Point] => {
  const run = [inBay(before, before.length, 0), after.start] as const;
  const { along } = between(...run);
  if (!isSteep(along, [before, after])) return run;
  if (isAskew(before) && turn(before.along, along) > 0) {
    const foot = steeperFoot(after.start, { bay: before, end: before.length, side: 1 }, options);
    return foot === null ? run : [foot, run[1]];
  }
  if (isAskew(after) && turn(along, after.along) > 0) {
    const foot = steeperFoot(run[0], { bay: after, end: 0, side: -1 }, options);
    return foot === null ? run : [run[0], foot];
  }
  return run;
};

interface StepFoot {
  readonly bay: FrameBay;
  /** Of the bay, along it. */
  readonly end: number;
  /** 1 where the strip rises from it, -1 where it comes down. */
  readonly side: 1 | -1;
}

/** Where a strip from the higher bay's end comes down that stands `beyond` from what must be free over the lower one's. */
const steeperFoot = (
  top: Point,
  { bay, end, side }: StepFoot,
  options: StepOptions,
): Point | null => {
  const down = between(top, freeOver(bay, end, options));
  const sine = options.design.beyond / down.length;
  if (sine >= STEEPEST) return null;
  const cosineOf = Math.sqrt(1 - sine * sine);
  const left = leftOf(down.along);
  const along = {
    x: down.along.x * cosineOf + side * left.x * sine,
    y: down.along.y * cosineOf + side * left.y * sine,
  };
  return meeting({ at: top, along }, { at: inBay(bay, 0, 0), along: bay.along });
};

/** Sine of 45 degrees: what would have to turn farther than that has no height to stand in. */
const STEEPEST = Math.SQRT1_2;

/** Cosine of 45 degrees: farther round than that is a step. */
const STEP = Math.SQRT1_2;

const cosine = (a: Direction, b: Direction): number =>
  dot(vector(a.x, a.y, 0), vector(b.x, b.y, 0));

/**
 * Where a strip could stand square to the end of the higher bay, its back to the room behind the panels there: up before a bay
 * that rises, down behind one that ends. Empty where it would not come down near the end of the lower one.
 */
export const stepRuns = (
  before: FrameBay,
  after: FrameBay,
  { design, thickness }: Pick<PlanOptions, "design" | "thickness">,
): readonly (readonly [Point, Point])[] => {
  const away = thickness + 2 * GAP;
  const rising = { at: inBay(after, -away, 0), along: after.up };
  const falling = { at: inBay(before, before.length + away, 0), along: before.up };
  const foot = meeting(rising, { at: inBay(before, 0, 0), along: before.along });
  const end = meeting(falling, { at: after.start, along: after.along });
  const isNear = (place: Point, bayEnd: Point): boolean =>
    between(place, bayEnd).length <= Math.max(thickness, design.beyond) + GAP;
  return [
    ...(foot !== null &&
    isAlong(after.up, foot, rising.at) &&
    isNear(foot, inBay(before, before.length, 0))
      ? [[foot, rising.at] as const]
      : []),
    ...(end !== null && isAlong(before.up, end, falling.at) && isNear(end, after.start)
      ? [[falling.at, end] as const]
      : []),
  ];
};

const isAlong = (along: Direction, from: Point, to: Point): boolean =>
  (to.x - from.x) * along.x + (to.y - from.y) * along.y > 0;

/** null where they run side by side, or so nearly that they meet far off. */
export const meeting = (one: Line, other: Line): Point | null => {
  const turn = one.along.x * other.along.y - one.along.y * other.along.x;
  if (Math.abs(turn) < nearlySideBySide) return null;
  const [x, y] = [other.at.x - one.at.x, other.at.y - one.at.y];
  return stepped(one.at, one.along, (x * other.along.y - y * other.along.x) / turn);
};
