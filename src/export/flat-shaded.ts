// A mesh as a viewer draws it flat: each corner once for each direction that a triangle at it faces. Takes a mesh in
// millimetres and its frame in the console; gives float32 metres with y up, normals, indices and the bounds of the corners.

import type { Mesh } from "../geometry/solid/mesh.ts";
import { directionOut, type Frame, pointOut } from "../geometry/space/frame.ts";
import { cross, minus, type Vector, vector, vectorLength } from "../geometry/space/vector.ts";

export interface FlatShaded {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly indices: Uint32Array;
  readonly least: readonly number[];
  readonly most: readonly number[];
}

const METRES = 1 / 1000;

export const flatShaded = (mesh: Mesh, frame: Frame): FlatShaded => {
  const positions: number[] = [];
  const normals: number[] = [];
  const indices = new Uint32Array(mesh.triangles.length);
  /** By corner of the mesh: what it became, once for each direction. */
  const known: number[][] = [];
  const indexOf = (corner: number, normal: Vector): number => {
    const made = known[corner] ?? [];
    known[corner] = made;
    const same = made.find(
      (index) =>
        normals[3 * index] === normal.x &&
        normals[3 * index + 1] === normal.y &&
        normals[3 * index + 2] === normal.z,
    );
    if (same !== undefined) return same;
    const index = positions.length / 3;
    made.push(index);
    const place = upright(pointOut(frame, cornerAt(mesh, corner)));
    // Adding zero turns -0 into 0: the bounds are written as text, which has no -0.
    positions.push(place.x * METRES + 0, place.y * METRES + 0, place.z * METRES + 0);
    normals.push(normal.x, normal.y, normal.z);
    return index;
  };
  for (let at = 0; at < mesh.triangles.length; at += 3) {
    const corners = [0, 1, 2].map((step) => mesh.triangles[at + step] ?? 0);
    const normal = normalOf(mesh, corners, frame);
    for (const [step, corner] of corners.entries()) indices[at + step] = indexOf(corner, normal);
  }
  const rounded = Float32Array.from(positions);
  return { positions: rounded, normals: Float32Array.from(normals), indices, ...boundsOf(rounded) };
};

/** The console's axes to glTF's: a turn, no mirror. */
const upright = ({ x, y, z }: Vector): Vector => vector(-y, z, -x);

const cornerAt = ({ positions }: Mesh, corner: number): Vector =>
  vector(
    positions[3 * corner] ?? 0,
    positions[3 * corner + 1] ?? 0,
    positions[3 * corner + 2] ?? 0,
  );

/** Directions this close are one: far finer than an eye sees, and the vector's length stays 1 within a hundred-thousandth. */
const STEPS = 100_000;

const normalOf = (mesh: Mesh, corners: readonly number[], frame: Frame): Vector => {
  const [a, b, c] = corners.map((corner) => cornerAt(mesh, corner));
  const across = a && b && c ? cross(minus(b, a), minus(c, a)) : vector(0, 0, 0);
  const size = vectorLength(across);
  // A triangle without area faces nowhere; up is as good as any, and a normal must have a length.
  if (size === 0) return vector(0, 1, 0);
  const out = upright(directionOut(frame, across));
  const step = (value: number): number => Math.round((value / size) * STEPS) / STEPS + 0;
  return vector(step(out.x), step(out.y), step(out.z));
};

const boundsOf = (positions: Float32Array): Pick<FlatShaded, "least" | "most"> => {
  const least = [Infinity, Infinity, Infinity];
  const most = [-Infinity, -Infinity, -Infinity];
  for (const [index, value] of positions.entries()) {
    const axis = index % 3;
    least[axis] = Math.min(least[axis] ?? value, value);
    most[axis] = Math.max(most[axis] ?? value, value);
  }
  return { least, most };
};
