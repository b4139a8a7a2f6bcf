// Where a bay stands over or under the one before it in a step: the strip that closes it, along the end of the higher one, and
// the line beyond it at which the cheeks' edges run.

import type { Point } from "../../geometry/contour.ts";
import { dot, vector } from "../../geometry/space/vector.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { Direction } from "../../geometry/trigonometry.ts";
import type { Board } from "./board.ts";
import { type FrameBay, inBay } from "./frame-bay.ts";
import { endWeb, GAP } from "./frame-practice.ts";
import { offPlane } from "./frame-tolerance.ts";
import type { PlanOptions } from "./plan-options.ts";
import { between, leftOf, stepped } from "./profile.ts";

export interface Line {
  readonly at: Point;
  readonly along: Direction;
}

/**
 * The cheeks' edge beyond a strip between two bays that turns off steeply from either of them; null where it goes on. It stands
 * `beyond` before the strip's good face. Over what is dropped in it stands no farther than that allows: half-lapped ribs come
 * down straight, and the last stands a web from its bay's end; rails of a canted bay come down askew.
 */
export const stepEdge = (
  { at, along }: Pick<Board, "at" | "along">,
  bays: readonly [FrameBay, FrameBay],
  { design, thickness }: Pick<PlanOptions, "design" | "thickness">,
): Line | null => {
  if (!bays.some((bay) => cosine(bay.along, along) < STEP)) return null;
  const left = leftOf(along);
  const [before, after] = bays;
  const ends = [
    { bay: before, end: inBay(before, before.length, 0) },
    { bay: after, end: after.start },
  ].map(({ bay, end }) => ({
    bay,
    past: (end.x - at.x) * left.x + (end.y - at.y) * left.y,
  }));
  const below = ends.filter(({ bay, past }) => isAskew(bay) && past > -samePlace);
  const ribs = design.joints === "half-lap" ? [endWeb(thickness) - design.clearance] : [];
  const out = Math.min(design.beyond, ...ribs, ...below.map(({ past }) => Math.max(0, past)));
  return { at: stepped(at, left, out), along };
};

export const isAskew = ({ tilt }: FrameBay): boolean => Math.abs(tilt.y) > offPlane;

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
  if (Math.abs(turn) < NEARLY_SIDE_BY_SIDE) return null;
  const [x, y] = [other.at.x - one.at.x, other.at.y - one.at.y];
  return stepped(one.at, one.along, (x * other.along.y - y * other.along.x) / turn);
};

/** Sine of 15 degrees. */
const NEARLY_SIDE_BY_SIDE = 0.26;
