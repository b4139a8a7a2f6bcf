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
  const rgb = new Uint8Array(3 * width * height);
  const inks = inksOf(target);
  // Two million samples a picture: plain numbers in typed arrays, nothing is made for a pixel.
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const first = y * SAMPLES * target.width + x * SAMPLES;
      for (let channel = 0; channel < 3; channel += 1) {
        let sum = 0;
        for (let row = 0; row < SAMPLES; row += 1)
          for (let column = 0; column < SAMPLES; column += 1)
            sum += inks.shades[3 * inks.of[first + row * target.width + column]! + channel]!;
        rgb[3 * (y * width + x) + channel] = Math.round(sum / (SAMPLES * SAMPLES));
      }
    }
  return { width, height, rgb };
};

interface Inks {
  /** Red, green and blue: of the edges, of the paper, then of each face. */
  readonly shades: Float64Array;
  /** For each sample its place in `shades`. */
  readonly of: Uint32Array;
}

const EDGE_INK = 0;
const PAPER_INK = 1;
const FIRST_FACE = 2;

const inksOf = (target: RasterTarget): Inks => {
  const { faces, face, width, height } = target;
  const shades = new Float64Array(3 * (FIRST_FACE + faces.length));
  shades.set(EDGE, 3 * EDGE_INK);
  shades.set(PAPER, 3 * PAPER_INK);
  for (const [index, { shade }] of faces.entries()) shades.set(shade, 3 * (FIRST_FACE + index));
  const of = new Uint32Array(face.length);
  for (let index = 0; index < of.length; index += 1)
    of[index] = face[index]! < 0 ? PAPER_INK : FIRST_FACE + face[index]!;
  const normals = new Float64Array(3 * faces.length);
  for (const [index, { normal }] of faces.entries()) normals.set(normal, 3 * index);
  const isParted = partedIn(target, normals);
  for (let y = 0; y + 1 < height; y += 1)
    for (let x = 0; x + 1 < width; x += 1) {
      const index = y * width + x;
      if (isParted(index, index + 1) || isParted(index, index + width)) of[index] = EDGE_INK;
    }
  return { shades, of };
};

/** Whether an edge runs between two samples. */
const partedIn = (
  { face, depth }: RasterTarget,
  normals: Float64Array,
): ((a: number, b: number) => boolean) => {
  return (a, b) => {
    const one = face[a]!;
    const other = face[b]!;
    if (one === other) return false;
    if (one < 0 || other < 0) return true;
    const cosine =
      normals[3 * one]! * normals[3 * other]! +
      normals[3 * one + 1]! * normals[3 * other + 1]! +
      normals[3 * one + 2]! * normals[3 * other + 2]!;
    return cosine < EDGE_COSINE || Math.abs(depth[a]! - depth[b]!) > EDGE_STEP;
  };
};
