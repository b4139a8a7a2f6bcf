// Reads a binary STL: 80 bytes of header, a count, and 50 bytes a triangle (normal, three corners, two spare bytes), all
// little-endian. Takes bytes; never throws: what is wrong with them is listed.

import { cornerTable, type SolidBody, type SolidFile } from "./solid-file.ts";
import { normalOf, trianglePoints } from "./solid-triangle.ts";

const HEADER = 80;
const TRIANGLE = 50;

export const readStl = (bytes: Uint8Array, name: string): SolidFile => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const counted = bytes.length >= HEADER + 4 ? view.getUint32(HEADER, true) : 0;
  const held = Math.max(0, Math.floor((bytes.length - HEADER - 4) / TRIANGLE));
  const strangers =
    bytes.length === HEADER + 4 + counted * TRIANGLE
      ? []
      : [`${bytes.length} bytes for ${counted} triangles`];
  const body = readBody(view, Math.min(counted, held), name);
  const isNumbers = body.corners.every(Number.isFinite);
  return {
    unit: null,
    title: null,
    bodies: [body],
    strangers: isNumbers ? strangers : [...strangers, "a corner that is no number"],
  };
};

const readBody = (view: DataView, count: number, name: string): SolidBody => {
  const table = cornerTable();
  const triangles: number[] = [];
  const normals: number[] = [];
  for (let index = 0; index < count; index += 1) {
    const start = HEADER + 4 + index * TRIANGLE;
    const number = (place: number): number => view.getFloat32(start + 4 * place, true);
    normals.push(number(0), number(1), number(2));
    for (const corner of [3, 6, 9])
      triangles.push(table.cornerAt(number(corner), number(corner + 1), number(corner + 2)));
  }
  const body = { name, corners: table.corners, triangles, turnedNormals: 0 };
  return { ...body, turnedNormals: turnedNormals(body, normals) };
};

const turnedNormals = (body: SolidBody, normals: readonly number[]): number => {
  let turned = 0;
  for (let at = 0; at < body.triangles.length; at += 3) {
    const upright = normalOf(trianglePoints(body, at));
    const along =
      upright.x * normals[at]! + upright.y * normals[at + 1]! + upright.z * normals[at + 2]!;
    if (!(along >= 0)) turned += 1;
  }
  return turned;
};
