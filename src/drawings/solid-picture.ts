// A shaded picture of solids, seen from above one corner in parallel projection, with their edges drawn in. Takes meshes with
// a colour each, gives pixels. Hidden surfaces are settled by a depth buffer, so that any solid comes out right; every sum
// is plain arithmetic, so that the picture has the same bytes everywhere.

import { invariant } from "../geometry/invariant.ts";
import type { Mesh } from "../geometry/solid/mesh.ts";
import type { Raster, Rgb } from "./raster.ts";
import { type RasterTarget, rasterTriangle } from "./raster-triangle.ts";

export interface ColouredMesh {
  readonly mesh: Mesh;
  readonly colour: Rgb;
}

export interface SolidPictureOptions {
  /** Which side looks at the viewer: the operator's, or the rear. */
  readonly side: "front" | "rear";
  readonly width: number;
  readonly height: number;
}

const SOLID_PICTURE: SolidPictureOptions = { side: "rear", width: 840, height: 600 };

/** Samples a pixel along each axis: edges without stairs. */
const SAMPLES = 2;
const MARGIN = 24;
const PAPER: Rgb = [246, 245, 242];
const EDGE: Rgb = [38, 40, 44];

/** Neighbours whose normals part by more than this cosine, or whose depths part by this much in mm, have an edge between them. */
const EDGE_COSINE = 0.86;
const EDGE_STEP = 0.7;

/** Picture axes as unit vectors of the part's space: right, up, and toward the viewer; a view from above the right corner. */
const AXES = (() => {
  const root2 = Math.sqrt(2);
  const root6 = Math.sqrt(6);
  const root3 = Math.sqrt(3);
  return {
    right: [1 / root2, 1 / root2, 0],
    up: [-1 / root6, 1 / root6, 2 / root6],
    toward: [1 / root3, -1 / root3, 1 / root3],
  } as const;
})();

export const solidPicture = (
  meshes: readonly ColouredMesh[],
  options: Partial<SolidPictureOptions> = {},
): Raster => {
  const settings = { ...SOLID_PICTURE, ...options };
  const seen = meshes.map((coloured) => seenMesh(coloured, settings.side));
  const target = emptyTarget(settings);
  const fit = fitted(seen, target);
  for (const each of seen) drawMesh(each, fit, target);
  return shaded(target, settings);
};

interface SeenMesh {
  /** Picture coordinates, three a vertex: right, up, toward. */
  readonly points: Float64Array;
  readonly triangles: Uint32Array;
  readonly colour: Rgb;
}

const seenMesh = ({ mesh, colour }: ColouredMesh, side: "front" | "rear"): SeenMesh => {
  const { positions, triangles } = mesh;
  const points = new Float64Array(positions.length);
  // Seen from the rear the part is turned half round its upright axis: left stays honest.
  const sign = side === "rear" ? -1 : 1;
  for (let at = 0; at < positions.length; at += 3) {
    const x = sign * (positions[at] ?? 0);
    const y = positions[at + 1] ?? 0;
    const z = sign * (positions[at + 2] ?? 0);
    points[at] = dot(AXES.right, x, y, z);
    points[at + 1] = dot(AXES.up, x, y, z);
    points[at + 2] = dot(AXES.toward, x, y, z);
  }
  return { points, triangles, colour };
};

const dot = (axis: readonly [number, number, number], x: number, y: number, z: number): number =>
  axis[0] * x + axis[1] * y + axis[2] * z;

const emptyTarget = ({ width, height }: SolidPictureOptions): RasterTarget => {
  const wide = width * SAMPLES;
  const high = height * SAMPLES;
  const size = wide * high;
  return {
    width: wide,
    height: high,
    depth: new Float32Array(size).fill(Number.NEGATIVE_INFINITY),
    face: new Int32Array(size).fill(-1),
    faces: [],
  };
};

interface Fit {
  readonly scale: number;
  readonly right: number;
  readonly up: number;
}

/** Scale and shift that set the whole in the middle of the picture. */
const fitted = (meshes: readonly SeenMesh[], target: RasterTarget): Fit => {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { points } of meshes)
    for (let at = 0; at < points.length; at += 3) {
      left = Math.min(left, points[at] ?? 0);
      right = Math.max(right, points[at] ?? 0);
      low = Math.min(low, points[at + 1] ?? 0);
      high = Math.max(high, points[at + 1] ?? 0);
    }
  invariant(right > left && high > low, "a picture shows a solid");
  const margin = 2 * MARGIN * SAMPLES;
  const scale = Math.min(
    (target.width - margin) / (right - left),
    (target.height - margin) / (high - low),
  );
  return {
    scale,
    right: target.width / 2 - (scale * (left + right)) / 2,
    up: target.height / 2 + (scale * (low + high)) / 2,
  };
};

const drawMesh = (mesh: SeenMesh, fit: Fit, target: RasterTarget): void => {
  const { points, triangles, colour } = mesh;
  const corner = (index: number): readonly [number, number, number] => {
    const at = 3 * (triangles[index] ?? 0);
    return [
      fit.right + fit.scale * (points[at] ?? 0),
      fit.up - fit.scale * (points[at + 1] ?? 0),
      points[at + 2] ?? 0,
    ];
  };
  for (let index = 0; index < triangles.length; index += 3)
    rasterTriangle(
      [corner(index), corner(index + 1), corner(index + 2)],
      { colour, scale: fit.scale },
      target,
    );
};

/** Samples to pixels: each sample its face's shade, or the edge's ink where its neighbours part. */
const shaded = (target: RasterTarget, { width, height }: SolidPictureOptions): Raster => {
  // Two million samples a picture: sums go into one array, nothing is made for a pixel.
  const sums = new Float64Array(3 * width * height);
  const isEdge = edges(target);
  for (let index = 0; index < isEdge.length; index += 1) {
    const row = Math.floor(index / target.width);
    const column = index - row * target.width;
    const at = 3 * (Math.floor(row / SAMPLES) * width + Math.floor(column / SAMPLES));
    const ink = inkOf(target, isEdge, index);
    sums[at] = sums[at]! + ink[0];
    sums[at + 1] = sums[at + 1]! + ink[1];
    sums[at + 2] = sums[at + 2]! + ink[2];
  }
  const count = SAMPLES * SAMPLES;
  return { width, height, rgb: Uint8Array.from(sums, (sum) => Math.round(sum / count)) };
};

const inkOf = ({ face, faces }: RasterTarget, isEdge: Uint8Array, index: number): Rgb =>
  isEdge[index] === 1 ? EDGE : (faces[face[index]!]?.shade ?? PAPER);

const edges = (target: RasterTarget): Uint8Array => {
  const marks = new Uint8Array(target.width * target.height);
  for (let y = 0; y + 1 < target.height; y += 1)
    for (let x = 0; x + 1 < target.width; x += 1) {
      const index = y * target.width + x;
      if (parts(target, index, index + 1) || parts(target, index, index + target.width))
        marks[index] = 1;
    }
  return marks;
};

const parts = (target: RasterTarget, a: number, b: number): boolean => {
  const first = target.face[a] ?? -1;
  const second = target.face[b] ?? -1;
  if (first === second) return false;
  const one = target.faces[first];
  const other = target.faces[second];
  if (one === undefined || other === undefined) return true;
  const cosine =
    one.normal[0] * other.normal[0] +
    one.normal[1] * other.normal[1] +
    one.normal[2] * other.normal[2];
  return (
    cosine < EDGE_COSINE || Math.abs((target.depth[a] ?? 0) - (target.depth[b] ?? 0)) > EDGE_STEP
  );
};
