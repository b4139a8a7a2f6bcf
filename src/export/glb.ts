// Bodies as a binary glTF 2.0 (Khronos glTF 2.0 specification): a node a group, under it a node a body, flat-shaded triangles.
// Takes meshes in millimetres with the frame of each in the console (x forward, y left, z up); gives bytes, the same every time.
// Converted here, once: metres, x to the operator's right, y up, z toward the operator, so that a viewer begins at the seat.

import type { Mesh } from "../geometry/solid/mesh.ts";
import type { Frame } from "../geometry/space/frame.ts";
import { type FlatShaded, flatShaded } from "./flat-shaded.ts";
import { glbContainer } from "./glb-container.ts";
import { linearColour } from "./linear-colour.ts";
import { plainText } from "./plain-text.ts";

export interface GlbScene {
  readonly title: string;
  readonly groups: readonly GlbGroup[];
}

export interface GlbGroup {
  readonly name: string;
  readonly bodies: readonly GlbBody[];
}

export interface GlbBody {
  readonly name: string;
  readonly mesh: Mesh;
  readonly colour: GlbColour;
  /** Where the mesh stands in the console. */
  readonly frame: Frame;
}

export interface GlbColour {
  /** #rrggbb. */
  readonly colour: string;
  /** 1 is opaque; less is seen through. */
  readonly alpha: number;
}

/** Numbers of the specification: target of a buffer view, type of a component, mode of a primitive. */
const ARRAY_BUFFER = 34962;
const ELEMENT_ARRAY_BUFFER = 34963;
const UNSIGNED_SHORT = 5123;
const UNSIGNED_INT = 5125;
const FLOAT = 5126;
const TRIANGLES = 4;

/** A body of no triangles has no mesh in glTF: its node stands alone. */
export const glbFile = (scene: GlbScene): Uint8Array => {
  const bodies = scene.groups.flatMap((group) => group.bodies);
  const shapes = bodies.map(({ mesh, frame }) => flatShaded(mesh, frame));
  const buffer = packed(shapes);
  const materials = materialsOf(bodies);
  const meshNumbers = numbersOf(shapes);
  const root = {
    asset: { version: "2.0", generator: "Consolewright", extras: { axes: AXES } },
    scene: 0,
    scenes: [{ name: plainText(scene.title), ...listed("nodes", groupNumbers(scene)) }],
    ...listed("nodes", nodesOf(scene, meshNumbers)),
    ...(buffer.bytes.length === 0
      ? {}
      : {
          meshes: meshesOf(bodies, { shapes, materials, views: buffer.views }),
          materials: materials.map(materialEntry),
          accessors: buffer.accessors,
          bufferViews: buffer.bufferViews,
          buffers: [{ byteLength: buffer.bytes.length }],
        }),
  };
  // Numbers of this JSON are the bounds of float32 corners and must be those to the last bit: as the language writes them.
  return glbContainer(JSON.stringify(root), buffer.bytes);
};

const AXES =
  "Metres; x to the operator's right, y up, z toward the operator. Converted once from millimetres, x forward, y left, z up.";

/** glTF has no empty lists: what holds nothing is not there. */
const listed = (key: string, list: readonly unknown[]): object =>
  list.length === 0 ? {} : { [key]: list };

const groupNumbers = ({ groups }: GlbScene): readonly number[] => groups.map((_, index) => index);

/** A mesh for each body that has triangles. */
const numbersOf = (shapes: readonly FlatShaded[]): readonly (number | null)[] => {
  let next = 0;
  return shapes.map(({ indices }) => {
    if (indices.length === 0) return null;
    next += 1;
    return next - 1;
  });
};

const nodesOf = (
  { groups }: GlbScene,
  meshNumbers: readonly (number | null)[],
): readonly object[] => {
  let next = groups.length;
  const parents = groups.map(({ name, bodies }) => {
    const children = bodies.map((_, index) => next + index);
    next += bodies.length;
    return { name: plainText(name), ...(children.length === 0 ? {} : { children }) };
  });
  const children = groups
    .flatMap(({ bodies }) => bodies)
    .map(({ name }, index) => {
      const mesh = meshNumbers[index] ?? null;
      return { name: plainText(name), ...(mesh === null ? {} : { mesh }) };
    });
  return [...parents, ...children];
};

/** Accessors of one shape: where it lies in the list. */
interface ShapeViews {
  readonly positions: number;
  readonly normals: number;
  readonly indices: number;
}

interface PackedBuffer {
  readonly bytes: Uint8Array;
  readonly accessors: readonly object[];
  readonly bufferViews: readonly object[];
  /** By shape; null where it has no triangles. */
  readonly views: readonly (ShapeViews | null)[];
}

/** Positions, normals, indices of each shape, each run on a boundary of four bytes. */
const packed = (shapes: readonly FlatShaded[]): PackedBuffer => {
  const runs: Uint8Array[] = [];
  const accessors: object[] = [];
  const bufferViews: object[] = [];
  let length = 0;
  const add = (run: Uint8Array, target: number, accessor: object): number => {
    bufferViews.push({ buffer: 0, byteOffset: length, byteLength: run.length, target });
    accessors.push({ bufferView: bufferViews.length - 1, ...accessor });
    const padding = new Uint8Array((4 - (run.length % 4)) % 4);
    runs.push(run, padding);
    length += run.length + padding.length;
    return accessors.length - 1;
  };
  const views = shapes.map((shape): ShapeViews | null => {
    if (shape.indices.length === 0) return null;
    const count = shape.positions.length / 3;
    const vectors = { componentType: FLOAT, count, type: "VEC3" };
    const isShort = count <= MOST_SHORT;
    return {
      positions: add(floatBytes(shape.positions), ARRAY_BUFFER, {
        ...vectors,
        min: shape.least,
        max: shape.most,
      }),
      normals: add(floatBytes(shape.normals), ARRAY_BUFFER, vectors),
      indices: add(indexBytes(shape.indices, isShort), ELEMENT_ARRAY_BUFFER, {
        componentType: isShort ? UNSIGNED_SHORT : UNSIGNED_INT,
        count: shape.indices.length,
        type: "SCALAR",
      }),
    };
  });
  const bytes = new Uint8Array(length);
  let at = 0;
  for (const run of runs) {
    bytes.set(run, at);
    at += run.length;
  }
  return { bytes, accessors, bufferViews, views };
};

/** 65535 restarts a primitive and is no index (specification, 3.7.2.1). */
const MOST_SHORT = 65535;

/** Little-endian whatever the machine. */
const floatBytes = (values: Float32Array): Uint8Array => {
  const bytes = new Uint8Array(4 * values.length);
  const view = new DataView(bytes.buffer);
  for (const [index, value] of values.entries()) view.setFloat32(4 * index, value, true);
  return bytes;
};

const indexBytes = (indices: Uint32Array, isShort: boolean): Uint8Array => {
  const size = isShort ? 2 : 4;
  const bytes = new Uint8Array(size * indices.length);
  const view = new DataView(bytes.buffer);
  for (const [index, value] of indices.entries())
    if (isShort) view.setUint16(2 * index, value, true);
    else view.setUint32(4 * index, value, true);
  return bytes;
};

const meshesOf = (
  bodies: readonly GlbBody[],
  of: {
    readonly shapes: readonly FlatShaded[];
    readonly materials: readonly GlbColour[];
    readonly views: readonly (ShapeViews | null)[];
  },
): readonly object[] =>
  bodies.flatMap(({ name, colour }, index) => {
    const views = of.views[index] ?? null;
    if (views === null) return [];
    const material = of.materials.findIndex((each) => isSameColour(each, colour));
    const attributes = { POSITION: views.positions, NORMAL: views.normals };
    const primitive = { attributes, indices: views.indices, material, mode: TRIANGLES };
    return [{ name: plainText(name), primitives: [primitive] }];
  });

const isSameColour = (a: GlbColour, b: GlbColour): boolean =>
  a.colour === b.colour && a.alpha === b.alpha;

/** Each once, in the order in which bodies ask for them. */
const materialsOf = (bodies: readonly GlbBody[]): readonly GlbColour[] => {
  const colours = bodies
    .filter(({ mesh }) => mesh.triangles.length > 0)
    .map(({ colour }) => colour);
  return colours.filter(
    (colour, index) => colours.findIndex((other) => isSameColour(other, colour)) === index,
  );
};

const materialEntry = ({ colour, alpha }: GlbColour): object => ({
  name: alpha < 1 ? `${colour}, clear` : colour,
  pbrMetallicRoughness: {
    baseColorFactor: [...linearColour(colour), alpha],
    metallicFactor: 0,
    roughnessFactor: 0.8,
  },
  ...(alpha < 1 ? { alphaMode: "BLEND" } : {}),
});
