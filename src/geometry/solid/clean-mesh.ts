// Makes any triangles into a mesh: corners rounded to float32 and joined where they are one place, triangles that have
// fallen flat dropped or turned about their longest edge. The surface stays closed where it was closed.

import type { Mesh } from "./mesh.ts";
import { sliverHeight } from "./solid-tolerance.ts";

/** Corners as x, y, z; triangles as three places in them. */
export interface Triangles {
  readonly corners: ArrayLike<number>;
  readonly triangles: ArrayLike<number>;
}

export const cleanMesh = (raw: Triangles): Mesh => {
  const joined = joinedCorners(raw);
  turnSlivers(joined);
  return compact(joined);
};

interface Working {
  readonly positions: Float32Array;
  /** Three corners a triangle; changed in place. */
  readonly triangles: number[];
}

const joinedCorners = ({ corners, triangles }: Triangles): Working => {
  const positions = Float32Array.from(corners);
  // -0 and 0 are one place and must be one pattern of bits.
  for (let at = 0; at < positions.length; at += 1) if (positions[at] === 0) positions[at] = 0;
  const owner = firstAtPlace(new Uint32Array(positions.buffer));
  const kept: number[] = [];
  for (let at = 0; at < triangles.length; at += 3) {
    const a = owner[triangles[at]!]!;
    const b = owner[triangles[at + 1]!]!;
    const c = owner[triangles[at + 2]!]!;
    if (a !== b && b !== c && c !== a) kept.push(a, b, c);
  }
  return { positions, triangles: kept };
};

/** For each corner the first one at its place, found by the bits of its three numbers. */
const firstAtPlace = (bits: Uint32Array): Uint32Array => {
  const owner = new Uint32Array(bits.length / 3);
  const before = new Int32Array(owner.length).fill(-1);
  const latest = new Map<number, number>();
  for (let corner = 0; corner < owner.length; corner += 1) {
    const x = bits[3 * corner]!;
    const y = bits[3 * corner + 1]!;
    const z = bits[3 * corner + 2]!;
    // Three odd factors spread the bits; places that share a sum are told apart below.
    const sum = Math.imul(x, 73856093) ^ Math.imul(y, 19349663) ^ Math.imul(z, 83492791);
    let other = latest.get(sum) ?? -1;
    before[corner] = other;
    latest.set(sum, corner);
    while (
      other >= 0 &&
      (bits[3 * other] !== x || bits[3 * other + 1] !== y || bits[3 * other + 2] !== z)
    )
      other = before[other]!;
    owner[corner] = other < 0 ? corner : owner[other]!;
  }
  return owner;
};

/** A sliver and its neighbour across the longest edge take the other diagonal; again, until none is left or none can. */
const turnSlivers = (mesh: Working): void => {
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const slivers: number[] = [];
    for (let at = 0; at < mesh.triangles.length; at += 3)
      if (heightOf(mesh, at) < sliverHeight) slivers.push(at);
    if (slivers.length === 0) return;
    const edges = edgeOwners(mesh.triangles);
    const turned = slivers.filter((at) => turnSliver(mesh, at, edges));
    if (turned.length === 0) return;
  }
};

/** A chain of slivers is undone one a pass; longer chains than this were never seen in 2,000 solids. */
const mostPasses = 32;

/** The triangle that runs along each directed edge. */
const edgeOwners = (triangles: readonly number[]): Map<string, number> => {
  const owners = new Map<string, number>();
  for (let at = 0; at < triangles.length; at += 3)
    for (let side = 0; side < 3; side += 1)
      owners.set(edgeName(triangles[at + side]!, triangles[at + ((side + 1) % 3)]!), at);
  return owners;
};

const edgeName = (from: number, to: number): string => `${from},${to}`;

const turnSliver = (mesh: Working, at: number, edges: Map<string, number>): boolean => {
  const { triangles } = mesh;
  const side = longestSide(mesh, at);
  const from = triangles[at + side]!;
  const to = triangles[at + ((side + 1) % 3)]!;
  const tip = triangles[at + ((side + 2) % 3)]!;
  const other = edges.get(edgeName(to, from));
  if (edges.get(edgeName(from, to)) !== at || other === undefined) return false;
  const far = [0, 1, 2]
    .map((index) => triangles[other + index]!)
    .find((corner) => corner !== from && corner !== to);
  if (far === undefined || far === tip) return false;
  if (edges.has(edgeName(tip, far)) || edges.has(edgeName(far, tip))) return false;
  put(triangles, at, [from, far, tip]);
  put(triangles, other, [far, to, tip]);
  edges.delete(edgeName(from, to));
  edges.delete(edgeName(to, from));
  for (const [place, corners] of [
    [at, [from, far, tip]],
    [other, [far, to, tip]],
  ] as const)
    for (let index = 0; index < 3; index += 1)
      edges.set(edgeName(corners[index]!, corners[(index + 1) % 3]!), place);
  return true;
};

const put = (triangles: number[], at: number, corners: readonly [number, number, number]): void => {
  for (const [index, corner] of corners.entries()) triangles[at + index] = corner;
};

const squaredSide = ({ positions, triangles }: Working, at: number, side: number): number => {
  const a = triangles[at + side]! * 3;
  const b = triangles[at + ((side + 1) % 3)]! * 3;
  const dx = positions[b]! - positions[a]!;
  const dy = positions[b + 1]! - positions[a + 1]!;
  const dz = positions[b + 2]! - positions[a + 2]!;
  return dx * dx + dy * dy + dz * dz;
};

const longestSide = (mesh: Working, at: number): number => {
  const sides = [0, 1, 2].map((side) => squaredSide(mesh, at, side));
  return sides.indexOf(Math.max(...sides));
};

/** Over the longest side. */
const heightOf = (mesh: Working, at: number): number => {
  const { positions, triangles } = mesh;
  const a = triangles[at]! * 3;
  const b = triangles[at + 1]! * 3;
  const c = triangles[at + 2]! * 3;
  const ux = positions[b]! - positions[a]!;
  const uy = positions[b + 1]! - positions[a + 1]!;
  const uz = positions[b + 2]! - positions[a + 2]!;
  const vx = positions[c]! - positions[a]!;
  const vy = positions[c + 1]! - positions[a + 1]!;
  const vz = positions[c + 2]! - positions[a + 2]!;
  const x = uy * vz - uz * vy;
  const y = uz * vx - ux * vz;
  const z = ux * vy - uy * vx;
  const longest = Math.max(
    squaredSide(mesh, at, 0),
    squaredSide(mesh, at, 1),
    squaredSide(mesh, at, 2),
  );
  return Math.sqrt((x * x + y * y + z * z) / longest);
};

/** Corners that are used, in the order of their first use. */
const compact = ({ positions, triangles }: Working): Mesh => {
  const places = new Map<number, number>();
  const order: number[] = [];
  for (const corner of triangles) {
    if (places.has(corner)) continue;
    places.set(corner, order.length);
    order.push(corner);
  }
  const kept = new Float32Array(order.length * 3);
  for (const [place, corner] of order.entries())
    kept.set(positions.subarray(3 * corner, 3 * corner + 3), 3 * place);
  return {
    positions: kept,
    triangles: Uint32Array.from(triangles, (corner) => places.get(corner)!),
  };
};
