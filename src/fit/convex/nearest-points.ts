// Two convex pieces: how far apart they lie and where, or that they meet. The search of Gilbert, Johnson and Keerthi
// ("A fast procedure for computing the distance between complex objects in three-dimensional space", IEEE J. Robotics and
// Automation 4, 1988) over the differences of their corners; both are seen in the frame of the first.

import { type Frame, pointOut } from "../../geometry/space/frame.ts";
import { type Vector, vector } from "../../geometry/space/vector.ts";
import { beyondNoise, noDistance, searchGain } from "../fit-tolerance.ts";
import type { ConvexPiece } from "./convex-piece.ts";
import { emptySimplex, nearerFace } from "./simplex.ts";

export type Nearest =
  | { readonly kind: "meet" }
  /** Farther apart than was asked for. Some that are farther are still told as apart: the search had ended. */
  | { readonly kind: "beyond" }
  | {
      readonly kind: "apart";
      readonly gap: number;
      /** In the frame of the first piece. */
      readonly onFirst: Vector;
      readonly onSecond: Vector;
    };

export interface NearestSearch {
  /** Of the second piece, seen from the first. */
  readonly frame: Frame;
  /** The search ends where a plane between the two shows that they are farther apart. */
  readonly within: number;
}

export const nearestPoints = (
  first: ConvexPiece,
  second: ConvexPiece,
  { frame, within }: NearestSearch,
): Nearest => {
  const middle = pointOut(frame, second.middle);
  TOWARD[0] = first.middle.x - middle.x;
  TOWARD[1] = first.middle.y - middle.y;
  TOWARD[2] = first.middle.z - middle.z;
  let squared = alongToward(TOWARD, 0);
  if (squared === 0) return { kind: "meet" };
  const limit = within + beyondNoise;
  let best = Infinity;
  SIMPLEX.count = 0;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    putFarthest(first, second, frame);
    // Each lies on its own side of a plane across this direction, and so far from the other, times the direction's length.
    const bound = alongToward(SIMPLEX.differences, 3 * SIMPLEX.count);
    if (bound > 0 && bound * bound > limit * limit * squared) return { kind: "beyond" };
    if (SIMPLEX.count > 0 && squared - bound <= searchGain * squared) break;
    if (isKnown()) break;
    const now = nearerFace(SIMPLEX, best);
    if (now <= noDistance) return { kind: "meet" };
    // Arithmetic alone can't bring the search nearer.
    if (now >= best) break;
    best = now;
    putNearest(SIMPLEX.differences);
    squared = alongToward(TOWARD, 0);
  }
  return apart();
};

/** No search of 100,000 pairs of boxes and prisms took more than 40. */
const MOST_STEPS = 100;

/** What one search writes over and the next begins anew: no search calls another. */
const SIMPLEX = emptySimplex();
/** From the origin to the nearest difference that is known; seen from within the second piece in `BACK`. */
const TOWARD = new Float64Array(3);
const AWAY = new Float64Array(3);
const BACK = new Float64Array(3);

const alongToward = (points: Float64Array, at: number): number =>
  TOWARD[0]! * points[at]! + TOWARD[1]! * points[at + 1]! + TOWARD[2]! * points[at + 2]!;

/** The corners of either that lie farthest toward the other, behind those of the simplex. */
const putFarthest = (first: ConvexPiece, second: ConvexPiece, frame: Frame): void => {
  const { onFirst, onSecond, differences, count } = SIMPLEX;
  const [tx, ty, tz] = [TOWARD[0]!, TOWARD[1]!, TOWARD[2]!];
  const { x, y, z, origin } = frame;
  AWAY[0] = -tx;
  AWAY[1] = -ty;
  AWAY[2] = -tz;
  BACK[0] = x.x * tx + x.y * ty + x.z * tz;
  BACK[1] = y.x * tx + y.y * ty + y.z * tz;
  BACK[2] = z.x * tx + z.y * ty + z.z * tz;
  const from = farthestCorner(first.corners, AWAY);
  const other = farthestCorner(second.corners, BACK);
  const [sx, sy, sz] = [
    second.corners[other]!,
    second.corners[other + 1]!,
    second.corners[other + 2]!,
  ];
  const at = 3 * count;
  onFirst[at] = first.corners[from]!;
  onFirst[at + 1] = first.corners[from + 1]!;
  onFirst[at + 2] = first.corners[from + 2]!;
  onSecond[at] = origin.x + (x.x * sx + y.x * sy + z.x * sz);
  onSecond[at + 1] = origin.y + (x.y * sx + y.y * sy + z.y * sz);
  onSecond[at + 2] = origin.z + (x.z * sx + y.z * sy + z.z * sz);
  for (let place = at; place < at + 3; place += 1)
    differences[place] = onFirst[place]! - onSecond[place]!;
};

/** Where its numbers begin. */
const farthestCorner = (corners: Float64Array, along: Float64Array): number => {
  const [x, y, z] = [along[0]!, along[1]!, along[2]!];
  let most = -Infinity;
  let found = 0;
  for (let at = 0; at < corners.length; at += 3) {
    const reach = corners[at]! * x + corners[at + 1]! * y + corners[at + 2]! * z;
    if (reach > most) {
      most = reach;
      found = at;
    }
  }
  return found;
};

const isKnown = (): boolean => {
  const { differences, count } = SIMPLEX;
  const at = 3 * count;
  for (let known = 0; known < at; known += 3)
    if (
      differences[known] === differences[at] &&
      differences[known + 1] === differences[at + 1] &&
      differences[known + 2] === differences[at + 2]
    )
      return true;
  return false;
};

const putNearest = (points: Float64Array): void => {
  for (let axis = 0; axis < 3; axis += 1) TOWARD[axis] = weighted(points, axis);
};

const weighted = (points: Float64Array, axis: number): number => {
  const { shares, count } = SIMPLEX;
  let sum = 0;
  for (let place = 0; place < count; place += 1) sum += points[3 * place + axis]! * shares[place]!;
  return sum;
};

const apart = (): Nearest => {
  const { onFirst, onSecond } = SIMPLEX;
  const at = (points: Float64Array): Vector =>
    vector(weighted(points, 0), weighted(points, 1), weighted(points, 2));
  return {
    kind: "apart",
    gap: Math.sqrt(alongToward(TOWARD, 0)),
    onFirst: at(onFirst),
    onSecond: at(onSecond),
  };
};
