// The point of a point, edge, triangle or tetrahedron that is nearest to the origin. Every face that the newest corner is of
// is tried, up to eight small sums (the rest was tried before it came), and no case is told apart by a sign that arithmetic
// could turn. All of it is numbers in arrays that one search writes over: a drag asks for thousands of searches a second.

import { flatTriangle } from "../fit-tolerance.ts";

/** Up to four corners, x y z of each one after the other. What lies behind them is none of it. */
export interface Simplex {
  count: number;
  /** Of each: the point on the first piece, the point on the second, the first less the second. */
  readonly onFirst: Float64Array;
  readonly onSecond: Float64Array;
  readonly differences: Float64Array;
  /** The share of each corner in the nearest point. */
  readonly shares: Float64Array;
}

export const emptySimplex = (): Simplex => ({
  count: 0,
  onFirst: new Float64Array(12),
  onSecond: new Float64Array(12),
  differences: new Float64Array(12),
  shares: new Float64Array(4),
});

/**
 * Takes in the corner that has been written behind the others, drops those that do not hold the nearest point, and says how
 * far that is, squared: 0 where the origin lies within. A point no nearer than `best` leaves the simplex as it was.
 */
export const nearerFace = (simplex: Simplex, best: number): number => {
  const { count, differences } = simplex;
  let least = Infinity;
  let nearest: Face | null = null;
  for (const face of FACES[count]!) {
    if (!findShares(differences, face)) continue;
    const squared = face.length === 4 ? 0 : squaredSum(differences, face);
    if (squared >= least) continue;
    least = squared;
    nearest = face;
    BEST.set(TRIAL);
  }
  if (nearest !== null && least < best) keep(simplex, nearest);
  return least;
};

type Face = readonly number[];

/** By how many there were before the newest. Single corners first: of equally near faces the smallest is kept. */
const FACES: readonly (readonly Face[])[] = [
  [[0]],
  [[1], [0, 1]],
  [[2], [0, 2], [1, 2], [0, 1, 2]],
  [[3], [0, 3], [1, 3], [2, 3], [0, 1, 3], [0, 2, 3], [1, 2, 3], [0, 1, 2, 3]],
];

/** Shares of the face that is tried, and of the nearest so far. */
const TRIAL = new Float64Array(4);
const BEST = new Float64Array(4);

const keep = (simplex: Simplex, face: Face): void => {
  const { onFirst, onSecond, differences, shares } = simplex;
  for (let place = 0; place < face.length; place += 1) {
    const from = 3 * face[place]!;
    for (let axis = 0; axis < 3; axis += 1) {
      onFirst[3 * place + axis] = onFirst[from + axis]!;
      onSecond[3 * place + axis] = onSecond[from + axis]!;
      differences[3 * place + axis] = differences[from + axis]!;
    }
    shares[place] = BEST[place]!;
  }
  simplex.count = face.length;
};

const squaredSum = (differences: Float64Array, face: Face): number => {
  let [x, y, z] = [0, 0, 0];
  for (let place = 0; place < face.length; place += 1) {
    const at = 3 * face[place]!;
    const share = TRIAL[place]!;
    x += differences[at]! * share;
    y += differences[at + 1]! * share;
    z += differences[at + 2]! * share;
  }
  return x * x + y * y + z * z;
};

/** Shares of the corners at the foot of the perpendicular from the origin; false where it falls outside, or is nowhere. */
const findShares = (differences: Float64Array, face: Face): boolean => {
  switch (face.length) {
    case 1:
      TRIAL[0] = 1;
      return true;
    case 2:
      return findEdgeShares(differences, 3 * face[0]!, 3 * face[1]!);
    case 3:
      return findTriangleShares(differences, face);
    default:
      return findTetrahedronShares(differences, face);
  }
};

const findEdgeShares = (d: Float64Array, a: number, b: number): boolean => {
  const x = d[b]! - d[a]!;
  const y = d[b + 1]! - d[a + 1]!;
  const z = d[b + 2]! - d[a + 2]!;
  const length = x * x + y * y + z * z;
  if (length === 0) return false;
  const share = -(d[a]! * x + d[a + 1]! * y + d[a + 2]! * z) / length;
  TRIAL[0] = 1 - share;
  TRIAL[1] = share;
  return share > 0 && share < 1;
};

const findTriangleShares = (d: Float64Array, face: Face): boolean => {
  const [a, b, c] = [3 * face[0]!, 3 * face[1]!, 3 * face[2]!];
  const [ax, ay, az] = [d[a]!, d[a + 1]!, d[a + 2]!];
  const [ux, uy, uz] = [d[b]! - ax, d[b + 1]! - ay, d[b + 2]! - az];
  const [vx, vy, vz] = [d[c]! - ax, d[c + 1]! - ay, d[c + 2]! - az];
  const uu = ux * ux + uy * uy + uz * uz;
  const uv = ux * vx + uy * vy + uz * vz;
  const vv = vx * vx + vy * vy + vz * vz;
  const area = uu * vv - uv * uv;
  if (area <= flatTriangle * uu * vv) return false;
  const au = -(ax * ux + ay * uy + az * uz);
  const av = -(ax * vx + ay * vy + az * vz);
  const ofB = (au * vv - av * uv) / area;
  const ofC = (av * uu - au * uv) / area;
  const ofA = 1 - ofB - ofC;
  TRIAL[0] = ofA;
  TRIAL[1] = ofB;
  TRIAL[2] = ofC;
  return ofA > 0 && ofB > 0 && ofC > 0;
};

const findTetrahedronShares = (d: Float64Array, face: Face): boolean => {
  const [a, b, c, e] = [3 * face[0]!, 3 * face[1]!, 3 * face[2]!, 3 * face[3]!];
  const [ax, ay, az] = [d[a]!, d[a + 1]!, d[a + 2]!];
  const [ux, uy, uz] = [d[b]! - ax, d[b + 1]! - ay, d[b + 2]! - az];
  const [vx, vy, vz] = [d[c]! - ax, d[c + 1]! - ay, d[c + 2]! - az];
  const [wx, wy, wz] = [d[e]! - ax, d[e + 1]! - ay, d[e + 2]! - az];
  // Normals of the three faces at the first corner: what a triple product needs of two of its edges.
  const [px, py, pz] = [vy * wz - vz * wy, vz * wx - vx * wz, vx * wy - vy * wx];
  const whole = ux * px + uy * py + uz * pz;
  if (whole === 0) return false;
  const ofB = -(ax * px + ay * py + az * pz) / whole;
  const ofC =
    -(ux * (ay * wz - az * wy) + uy * (az * wx - ax * wz) + uz * (ax * wy - ay * wx)) / whole;
  const ofD =
    -(ux * (vy * az - vz * ay) + uy * (vz * ax - vx * az) + uz * (vx * ay - vy * ax)) / whole;
  const ofA = 1 - ofB - ofC - ofD;
  TRIAL[0] = ofA;
  TRIAL[1] = ofB;
  TRIAL[2] = ofC;
  TRIAL[3] = ofD;
  return ofA >= 0 && ofB >= 0 && ofC >= 0 && ofD >= 0;
};
