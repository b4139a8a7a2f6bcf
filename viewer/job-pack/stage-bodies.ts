// The bodies of a file that was read, ready to be drawn as one: corners of triangles one after the other, how each faces, and
// lines where edges are. Made beside the page, so that the page has little left to do but to draw.

import type { SolidBody } from "../../src/inspection/solid-file.ts";
import { meshEdges } from "../console/mesh-edges.ts";
import type { ReadSolids } from "./read-solids.ts";
import { samePlaces } from "./same-places.ts";
import { drawnStep } from "./step-triangles.ts";

/** Three numbers a place; three places a triangle, two a line. */
export interface StageBodies {
  readonly corners: Float32Array;
  /** One a corner. */
  readonly normals: Float32Array;
  readonly lines: Float32Array;
  /** Faces that are drawn by their edges alone. */
  readonly undrawn: number;
}

/** `tell`: how many of the bodies have their edges. */
export const stageBodies = (
  read: ReadSolids,
  tell: (done: number, of: number) => void,
): StageBodies => {
  const told = <Body>(
    bodies: readonly Body[],
    drawn: (body: Body) => StageBodies,
  ): readonly StageBodies[] =>
    bodies.map((body, index) => {
      tell(index, bodies.length);
      return drawn(body);
    });
  const bodies =
    read.kind === "meshes" ? told(read.bodies, meshBody) : told(read.solids, drawnStep);
  return {
    corners: joined(bodies.map(({ corners }) => corners)),
    normals: joined(bodies.map(({ normals }) => normals)),
    lines: joined(bodies.map(({ lines }) => lines)),
    undrawn: bodies.reduce((count, { undrawn }) => count + undrawn, 0),
  };
};

/** Each triangle with corners of its own and flat, so that edges stay sharp. */
const meshBody = ({ corners, triangles }: SolidBody): StageBodies => {
  const positions = new Float32Array(corners);
  const own = new Float32Array(3 * triangles.length);
  for (let at = 0; at < triangles.length; at += 1)
    for (let axis = 0; axis < 3; axis += 1)
      own[3 * at + axis] = positions[3 * triangles[at]! + axis]!;
  const place = samePlaces(positions);
  const joint = new Uint32Array(triangles);
  for (let at = 0; at < joint.length; at += 1) joint[at] = place[joint[at]!]!;
  const lines = meshEdges({ positions, triangles: joint });
  return { corners: own, normals: flatNormals(own), lines, undrawn: 0 };
};

/** Of length 1; none where a triangle has no area. */
const flatNormals = (own: Float32Array): Float32Array => {
  const normals = new Float32Array(own.length);
  for (let at = 0; at < own.length; at += 9) {
    const side = (to: number, axis: number): number => own[at + to + axis]! - own[at + axis]!;
    const x = side(3, 1) * side(6, 2) - side(3, 2) * side(6, 1);
    const y = side(3, 2) * side(6, 0) - side(3, 0) * side(6, 2);
    const z = side(3, 0) * side(6, 1) - side(3, 1) * side(6, 0);
    const length = Math.sqrt(x * x + y * y + z * z);
    if (length === 0) continue;
    for (let corner = at; corner < at + 9; corner += 3) {
      normals[corner] = x / length;
      normals[corner + 1] = y / length;
      normals[corner + 2] = z / length;
    }
  }
  return normals;
};

const joined = (parts: readonly Float32Array[]): Float32Array => {
  const all = new Float32Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};
