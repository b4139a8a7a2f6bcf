// Reads a binary glTF 2.0 file back: header, chunks, accessors and their bounds, and the triangles of every node by name.
// Takes bytes, gives bodies in millimetres and the console's axes again; never throws: what is wrong or not understood is listed.

import { strFromU8 } from "fflate";
import { type AccessorReader, accessorReader } from "./glb-accessors.ts";
import { type Entry, entriesOf, isEntry, numberIn, wordIn } from "./glb-entries.ts";
import type { SolidBody } from "./solid-file.ts";

export interface GlbFile {
  readonly title: string;
  /** In the file's order: a node of the scene and what hangs on it. */
  readonly groups: readonly GlbFileGroup[];
  readonly strangers: readonly string[];
}

export interface GlbFileGroup {
  readonly name: string;
  readonly bodies: readonly SolidBody[];
}

export const readGlb = (bytes: Uint8Array): GlbFile => {
  const strangers: string[] = [];
  const chunks = chunksOf(bytes, strangers);
  const root = chunks === null ? null : rootOf(chunks.json);
  if (chunks === null || root === null)
    return { title: "", groups: [], strangers: [...strangers, "no JSON chunk that can be read"] };
  headFaults(root, chunks.binary, strangers);
  const scene = entriesOf(root, "scenes")[numberIn(root, "scene") ?? 0] ?? {};
  const reading: Reading = {
    nodes: entriesOf(root, "nodes"),
    meshes: entriesOf(root, "meshes"),
    accessors: accessorReader(root, chunks.binary, strangers),
    strangers,
  };
  const groups = indicesIn(scene, "nodes").map((index) => groupOf(index, reading));
  return { title: wordIn(scene, "name"), groups, strangers };
};

interface Chunks {
  readonly json: Uint8Array;
  readonly binary: Uint8Array;
}

const HEADER = 12;
/** "glTF", "JSON", "BIN" and a zero, as they stand in the file. */
const MAGIC = "glTF";
const JSON_TYPE = "JSON";
const BINARY_TYPE = "BIN\0";

const chunksOf = (bytes: Uint8Array, strangers: string[]): Chunks | null => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < HEADER || letters(bytes, 0) !== MAGIC) {
    strangers.push("no glTF header");
    return null;
  }
  if (view.getUint32(4, true) !== 2) strangers.push(`version ${view.getUint32(4, true)}`);
  if (view.getUint32(8, true) !== bytes.length)
    strangers.push(`a length of ${view.getUint32(8, true)} where there are ${bytes.length} bytes`);
  const found: { readonly type: string; readonly bytes: Uint8Array }[] = [];
  let at = HEADER;
  while (at + 8 <= bytes.length) {
    const length = view.getUint32(at, true);
    if (length % 4 !== 0) strangers.push(`a chunk of ${length} bytes, no multiple of 4`);
    if (at + 8 + length > bytes.length) {
      strangers.push("a chunk beyond the end");
      return null;
    }
    found.push({ type: letters(bytes, at + 4), bytes: bytes.subarray(at + 8, at + 8 + length) });
    at += 8 + length;
  }
  if (at !== bytes.length) strangers.push("bytes behind the last chunk");
  const [first, second, ...more] = found;
  if (more.length > 0) strangers.push("more than two chunks");
  if (first?.type !== JSON_TYPE) return null;
  if (second !== undefined && second.type !== BINARY_TYPE)
    strangers.push("a chunk of no known type");
  return { json: first.bytes, binary: second?.bytes ?? new Uint8Array(0) };
};

const letters = (bytes: Uint8Array, at: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + 4));

const rootOf = (json: Uint8Array): Entry | null => {
  try {
    const value: unknown = JSON.parse(strFromU8(json));
    return isEntry(value) ? value : null;
  } catch {
    return null;
  }
};

const headFaults = (root: Entry, binary: Uint8Array, strangers: string[]): void => {
  const asset = root["asset"];
  if (!isEntry(asset) || asset["version"] !== "2.0") strangers.push("no asset of version 2.0");
  for (const key of ["extensionsUsed", "extensionsRequired", "animations", "skins", "cameras"])
    if (key in root) strangers.push(key);
  const [buffer, ...others] = entriesOf(root, "buffers");
  if (others.length > 0 || (buffer !== undefined && "uri" in buffer))
    strangers.push("a buffer outside the file");
  const length = buffer === undefined ? 0 : (numberIn(buffer, "byteLength") ?? 0);
  // The chunk may be up to three bytes longer than the buffer (specification, 3.6.1.2).
  if (length > binary.length || binary.length - length > 3)
    strangers.push(`a buffer of ${length} bytes in a chunk of ${binary.length}`);
};

interface Reading {
  readonly nodes: readonly Entry[];
  readonly meshes: readonly Entry[];
  readonly accessors: AccessorReader;
  readonly strangers: string[];
}

const groupOf = (index: number, reading: Reading): GlbFileGroup => {
  const node = nodeAt(index, reading);
  const bodies = indicesIn(node, "children").map((child) =>
    bodyOf(nodeAt(child, reading), reading),
  );
  if ("mesh" in node) reading.strangers.push("a group with triangles of its own");
  return { name: wordIn(node, "name"), bodies };
};

const nodeAt = (index: number, { nodes, strangers }: Reading): Entry => {
  const node = nodes[index];
  if (node === undefined) strangers.push(`no node ${index}`);
  const moved = ["matrix", "translation", "rotation", "scale"].filter((key) => node && key in node);
  if (moved.length > 0) strangers.push(`a node with ${moved.join(", ")}`);
  return node ?? {};
};

const bodyOf = (node: Entry, reading: Reading): SolidBody => {
  const name = wordIn(node, "name");
  if ("children" in node) reading.strangers.push(`${name}: a body with nodes below it`);
  const number = numberIn(node, "mesh");
  if (number === null) return { name, corners: [], triangles: [], turnedNormals: 0 };
  const mesh = reading.meshes[number];
  if (mesh === undefined) reading.strangers.push(`no mesh ${number}`);
  const primitives = entriesOf(mesh ?? {}, "primitives");
  if (primitives.length !== 1) reading.strangers.push(`${name}: ${primitives.length} primitives`);
  return primitiveBody(name, primitives[0] ?? {}, reading);
};

const MILLIMETRES = 1000;

const primitiveBody = (name: string, primitive: Entry, reading: Reading): SolidBody => {
  const { accessors, strangers } = reading;
  const attributes = primitive["attributes"];
  const of = (key: string): number | null =>
    isEntry(attributes) ? numberIn(attributes, key) : null;
  if ((numberIn(primitive, "mode") ?? 4) !== 4) strangers.push(`${name}: not triangles`);
  const positions = accessors.vectors(of("POSITION"), true);
  const normals = accessors.vectors(of("NORMAL"), false);
  const indices = accessors.indices(numberIn(primitive, "indices"));
  const count = positions.length / 3;
  if (normals.length !== positions.length) strangers.push(`${name}: as many normals as corners`);
  if (indices.length % 3 !== 0) strangers.push(`${name}: a triangle of fewer corners`);
  if (!indices.every((index) => index < count)) {
    strangers.push(`${name}: a triangle over a corner that is not there`);
    return { name, corners: [], triangles: [], turnedNormals: 0 };
  }
  // Corners stay as they are numbered: joining half a million by place took seconds, and no reading of a model asks for it.
  return {
    name,
    corners: inConsole(positions),
    triangles: indices,
    turnedNormals: turned(positions, normals, indices),
  };
};

/** From x right, y up, z toward the operator to x forward, y left, z up. */
const inConsole = (positions: readonly number[]): readonly number[] => {
  const corners: number[] = [];
  for (let at = 0; at + 2 < positions.length; at += 3) {
    const [x, y, z] = [positions[at] ?? 0, positions[at + 1] ?? 0, positions[at + 2] ?? 0];
    corners.push(-z * MILLIMETRES, -x * MILLIMETRES, y * MILLIMETRES);
  }
  return corners;
};

/** Triangles whose first corner's normal looks to the other side than they face. */
const turned = (
  positions: readonly number[],
  normals: readonly number[],
  indices: readonly number[],
): number => {
  let count = 0;
  const side = (from: number, to: number): number => (positions[to] ?? 0) - (positions[from] ?? 0);
  for (let at = 0; at < indices.length; at += 3) {
    const a = 3 * (indices[at] ?? 0);
    const b = 3 * (indices[at + 1] ?? 0);
    const c = 3 * (indices[at + 2] ?? 0);
    const [ux, uy, uz] = [side(a, b), side(a + 1, b + 1), side(a + 2, b + 2)];
    const [vx, vy, vz] = [side(a, c), side(a + 1, c + 1), side(a + 2, c + 2)];
    const facing =
      (uy * vz - uz * vy) * (normals[a] ?? 0) +
      (uz * vx - ux * vz) * (normals[a + 1] ?? 0) +
      (ux * vy - uy * vx) * (normals[a + 2] ?? 0);
    if (facing < 0) count += 1;
  }
  return count;
};

const indicesIn = (entry: Entry, key: string): readonly number[] => {
  const list = entry[key];
  return Array.isArray(list) ? list.filter((value) => Number.isSafeInteger(value)) : [];
};
