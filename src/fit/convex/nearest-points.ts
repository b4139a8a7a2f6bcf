// Two convex pieces: how far apart they lie and where, or that they meet. The search of Gilbert, Johnson and Keerthi
// ("A fast procedure for computing the distance between complex objects in three-dimensional space", IEEE J. Robotics and
// Automation 4, 1988) over the differences of their corners; both are seen in the frame of the first.

import { directionIn, type Frame, pointOut } from "../../geometry/space/frame.ts";
import { dot, minus, scaled, type Vector, vector } from "../../geometry/space/vector.ts";
import { noDistance, searchGain } from "../fit-tolerance.ts";
import type { ConvexPiece } from "./convex-piece.ts";
import { nearestOfSimplex, type SimplexCorner } from "./simplex.ts";

export type Nearest =
  | { readonly kind: "meet" }
  | {
      readonly kind: "apart";
      readonly gap: number;
      /** In the frame of the first piece. */
      readonly onFirst: Vector;
      readonly onSecond: Vector;
    };

/** `frame`: of the second piece, seen from the first. */
export const nearestPoints = (first: ConvexPiece, second: ConvexPiece, frame: Frame): Nearest => {
  let toward = minus(first.middle, pointOut(frame, second.middle));
  if (dot(toward, toward) === 0) return { kind: "meet" };
  let simplex: readonly SimplexCorner[] = [];
  let best = Infinity;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const corner = farthestPair(first, second, { frame, along: scaled(toward, -1) });
    const squared = dot(toward, toward);
    if (simplex.length > 0 && squared - dot(toward, corner.difference) <= searchGain * squared)
      break;
    if (simplex.some((known) => isSame(known.difference, corner.difference))) break;
    const nearest = nearestOfSimplex([...simplex, corner]);
    const now = dot(nearest.point, nearest.point);
    if (nearest.isInside || now <= noDistance) return { kind: "meet" };
    // Arithmetic alone can't bring the search nearer.
    if (now >= best) break;
    best = now;
    simplex = nearest.corners;
    toward = nearest.point;
  }
  return apart(simplex);
};

/** No search of 100,000 pairs of boxes and prisms took more than 40. */
const MOST_STEPS = 100;

const apart = (simplex: readonly SimplexCorner[]): Nearest => {
  const { point, weights, corners } = nearestOfSimplex(simplex);
  return {
    kind: "apart",
    gap: Math.sqrt(dot(point, point)),
    onFirst: weighted(
      corners.map(({ onFirst }) => onFirst),
      weights,
    ),
    onSecond: weighted(
      corners.map(({ onSecond }) => onSecond),
      weights,
    ),
  };
};

const weighted = (points: readonly Vector[], weights: readonly number[]): Vector => {
  let [x, y, z] = [0, 0, 0];
  for (const [index, at] of points.entries()) {
    const weight = weights[index]!;
    x += at.x * weight;
    y += at.y * weight;
    z += at.z * weight;
  }
  return vector(x, y, z);
};

const isSame = (a: Vector, b: Vector): boolean => a.x === b.x && a.y === b.y && a.z === b.z;

const farthestPair = (
  first: ConvexPiece,
  second: ConvexPiece,
  { frame, along }: { readonly frame: Frame; readonly along: Vector },
): SimplexCorner => {
  const onFirst = farthestCorner(first, along);
  const back = directionIn(frame, scaled(along, -1));
  const onSecond = pointOut(frame, farthestCorner(second, back));
  return { onFirst, onSecond, difference: minus(onFirst, onSecond) };
};

const farthestCorner = ({ corners }: ConvexPiece, along: Vector): Vector => {
  let most = -Infinity;
  let place = 0;
  for (let at = 0; at < corners.length; at += 3) {
    const reach = corners[at]! * along.x + corners[at + 1]! * along.y + corners[at + 2]! * along.z;
    if (reach > most) {
      most = reach;
      place = at;
    }
  }
  return vector(corners[place]!, corners[place + 1]!, corners[place + 2]!);
};
