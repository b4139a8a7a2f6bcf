// The point of a point, edge, triangle or tetrahedron that is nearest to the origin. Every face is tried: up to fifteen
// small sums, and no case is told apart by a sign that arithmetic could turn.

import { dot, minus, plus, scaled, type Vector } from "../../geometry/space/vector.ts";
import { flatTriangle } from "../fit-tolerance.ts";

export interface SimplexCorner {
  readonly difference: Vector;
  readonly onFirst: Vector;
  readonly onSecond: Vector;
}

export interface NearestOfSimplex {
  readonly point: Vector;
  /** The corners that hold it, and the share of each. */
  readonly corners: readonly SimplexCorner[];
  readonly weights: readonly number[];
  /** The origin lies within the tetrahedron. */
  readonly isInside: boolean;
}

export const nearestOfSimplex = (corners: readonly SimplexCorner[]): NearestOfSimplex => {
  let best: NearestOfSimplex | null = null;
  let least = Infinity;
  for (const places of FACES) {
    if (places.at(-1)! >= corners.length) continue;
    const face = places.map((place) => corners[place]!);
    const weights = shares(face.map(({ difference }) => difference));
    if (weights === null) continue;
    if (weights.length === 4) return { point: ORIGIN, corners: face, weights, isInside: true };
    const point = sum(face, weights);
    const squared = dot(point, point);
    if (squared >= least) continue;
    least = squared;
    best = { point, corners: face, weights, isInside: false };
  }
  return best!;
};

const ORIGIN: Vector = { x: 0, y: 0, z: 0 };

/** Single corners first: of equally near faces the smallest is kept. */
const FACES: readonly (readonly number[])[] = [
  [0],
  [1],
  [2],
  [3],
  [0, 1],
  [0, 2],
  [1, 2],
  [0, 3],
  [1, 3],
  [2, 3],
  [0, 1, 2],
  [0, 1, 3],
  [0, 2, 3],
  [1, 2, 3],
  [0, 1, 2, 3],
];

const sum = (face: readonly SimplexCorner[], weights: readonly number[]): Vector =>
  face.reduce(
    (total, { difference }, index) => plus(total, scaled(difference, weights[index]!)),
    ORIGIN,
  );

/** Shares of the corners at the foot of the perpendicular from the origin; null where it falls outside, or is nowhere. */
const shares = (points: readonly Vector[]): readonly number[] | null => {
  const [a, b, c, d] = points;
  if (b === undefined) return [1];
  if (c === undefined) return edgeShares(a!, b);
  return d === undefined ? triangleShares(a!, b, c) : tetrahedronShares(a!, [b, c, d]);
};

const edgeShares = (a: Vector, b: Vector): readonly number[] | null => {
  const along = minus(b, a);
  const length = dot(along, along);
  if (length === 0) return null;
  const share = -dot(a, along) / length;
  return share > 0 && share < 1 ? [1 - share, share] : null;
};

const triangleShares = (a: Vector, b: Vector, c: Vector): readonly number[] | null => {
  const u = minus(b, a);
  const v = minus(c, a);
  const uu = dot(u, u);
  const uv = dot(u, v);
  const vv = dot(v, v);
  const area = uu * vv - uv * uv;
  if (area <= flatTriangle * uu * vv) return null;
  const au = -dot(a, u);
  const av = -dot(a, v);
  const ofB = (au * vv - av * uv) / area;
  const ofC = (av * uu - au * uv) / area;
  const ofA = 1 - ofB - ofC;
  return ofA > 0 && ofB > 0 && ofC > 0 ? [ofA, ofB, ofC] : null;
};

const tetrahedronShares = (
  a: Vector,
  [b, c, d]: readonly [Vector, Vector, Vector],
): readonly number[] | null => {
  const [u, v, w] = [minus(b, a), minus(c, a), minus(d, a)];
  const whole = triple(u, v, w);
  if (whole === 0) return null;
  const from = scaled(a, -1);
  const ofB = triple(from, v, w) / whole;
  const ofC = triple(u, from, w) / whole;
  const ofD = triple(u, v, from) / whole;
  const ofA = 1 - ofB - ofC - ofD;
  return ofA >= 0 && ofB >= 0 && ofC >= 0 && ofD >= 0 ? [ofA, ofB, ofC, ofD] : null;
};

const triple = (a: Vector, b: Vector, c: Vector): number =>
  a.x * (b.y * c.z - b.z * c.y) + a.y * (b.z * c.x - b.x * c.z) + a.z * (b.x * c.y - b.y * c.x);
