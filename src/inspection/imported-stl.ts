// An STL file that somebody else made, as a solid: binary or text, its surface closed. Takes bytes; never throws.

import { cleanMesh } from "../geometry/solid/clean-mesh.ts";
import { isClosed } from "../geometry/solid/is-closed.ts";
import { type Mesh, meshVolume } from "../geometry/solid/mesh.ts";
import { readStl } from "./solid-stl.ts";

export type ImportedStl =
  | { readonly kind: "solid"; readonly mesh: Mesh }
  | { readonly kind: "refused"; readonly why: string };

export const importedStl = (bytes: Uint8Array): ImportedStl => {
  const read = isText(bytes) ? textCorners(bytes) : binaryCorners(bytes);
  if (typeof read === "string") return refused(read);
  if (read.length === 0) return refused("it holds no triangle");
  if (read.some((value) => Math.abs(value) > FURTHEST))
    return refused("a corner stands more than 100 m from its origin");
  const mesh = cleanMesh({
    corners: read,
    triangles: Uint32Array.from({ length: read.length / 3 }, (_, corner) => corner),
  });
  if (!isClosed(mesh))
    return refused("its surface has gaps or edges that more than two triangles share");
  return meshVolume(mesh) > 0 ? { kind: "solid", mesh } : refused("its triangles look inward");
};

/** As far as the text of a design may place a thing; beyond, a solid's corners lose their tenths of a millimetre as well. */
const FURTHEST = 100_000;

const refused = (why: string): ImportedStl => ({ kind: "refused", why });

const HEADER = 80;
const TRIANGLE = 50;

/** A binary file's length follows from its count; any other that begins with "solid" is text. */
const isText = (bytes: Uint8Array): boolean => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isBinary =
    bytes.length >= HEADER + 4 &&
    bytes.length === HEADER + 4 + view.getUint32(HEADER, true) * TRIANGLE;
  return !isBinary && new TextDecoder().decode(bytes.subarray(0, 5)) === "solid";
};

/** Nine numbers a triangle, or why not. */
const binaryCorners = (bytes: Uint8Array): readonly number[] | string => {
  const { bodies, strangers } = readStl(bytes, "obstacle");
  const [fault] = strangers;
  if (fault !== undefined) return `it is no STL file: ${fault}`;
  return bodies.flatMap(({ corners, triangles }) =>
    triangles.flatMap((corner) => corners.slice(3 * corner, 3 * corner + 3)),
  );
};

const VERTEX = /^\s*vertex\s+(\S+)\s+(\S+)\s+(\S+)\s*$/;

const textCorners = (bytes: Uint8Array): readonly number[] | string => {
  const corners: number[] = [];
  for (const line of new TextDecoder().decode(bytes).split("\n")) {
    const found = VERTEX.exec(line);
    if (found !== null) corners.push(Number(found[1]), Number(found[2]), Number(found[3]));
  }
  if (!corners.every(Number.isFinite)) return "a corner is no number";
  return corners.length % 9 === 0 ? corners : "a triangle has not three corners";
};
