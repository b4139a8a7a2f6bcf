// Bodies in the solid kernel, one object for each recipe however often it stands in the console. They live in the kernel's
// own memory: whoever opens them deletes them.

import type { Manifold } from "manifold-3d";
import type { Kernel } from "../geometry/solid/kernel.ts";
import type { Mesh } from "../geometry/solid/mesh.ts";
import { meshSolid } from "../geometry/solid/mesh-solid.ts";
import type { Solid } from "../geometry/solid/solid.ts";
import type { Frame } from "../geometry/space/frame.ts";
import type { BodyShape } from "./console-body.ts";
import type { ConvexPiece } from "./convex/convex-piece.ts";
import { shapePieces } from "./convex/recipe-pieces.ts";

export interface KernelShapes {
  readonly kernel: Kernel;
  /** In the frame of its recipe; made when it is first asked for. Not to be deleted by who asks. */
  readonly of: (shape: BodyShape) => Manifold;
  /** How many objects are held. */
  readonly count: () => number;
  readonly delete: () => void;
}

export const kernelShapes = (kernel: Kernel): KernelShapes => {
  const made = new Map<Solid | Mesh, Manifold>();
  return {
    kernel,
    of: (shape) => {
      const recipe = shape.kind === "recipe" ? shape.solid : shape.mesh;
      const known = made.get(recipe);
      if (known !== undefined) return known;
      const fresh = shapeInKernel(shape, kernel);
      made.set(recipe, fresh);
      return fresh;
    },
    count: () => made.size,
    delete: () => {
      for (const shape of made.values()) shape.delete();
      made.clear();
    },
  };
};

/** A frame as the kernel takes it: column by column. */
export const kernelFrame = ({ x, y, z, origin }: Frame): KernelMatrix =>
  [
    ...[x.x, x.y, x.z, 0],
    ...[y.x, y.y, y.z, 0],
    ...[z.x, z.y, z.z, 0],
    ...[origin.x, origin.y, origin.z, 1],
  ] as const;

type KernelMatrix = Parameters<Manifold["transform"]>[0];

/** A single convex piece keeps its corners as they are; a mesh has them on its grid. */
const shapeInKernel = (shape: BodyShape, kernel: Kernel): Manifold => {
  const pieces = shapePieces(shape);
  const [only] = pieces;
  if (only !== undefined && pieces.length === 1 && only.filling.kind === "solid")
    return hullOf(pieces, kernel);
  const mesh = shape.kind === "recipe" ? keptMesh(shape.solid, kernel) : shape.mesh;
  const { positions, triangles } = mesh;
  const solid = new kernel.Manifold(
    new kernel.Mesh({ numProp: 3, vertProperties: positions, triVerts: triangles }),
  );
  if (solid.status() === "NoError" && !solid.isEmpty()) return solid;
  // What the kernel takes for no solid has no inside: the hull of all its pieces stands for it, which is never smaller.
  solid.delete();
  return hullOf(pieces, kernel);
};

const hullOf = (pieces: readonly ConvexPiece[], kernel: Kernel): Manifold =>
  kernel.Manifold.hull(
    pieces.flatMap(({ corners }) =>
      Array.from({ length: corners.length / 3 }, (_, index): [number, number, number] => [
        corners[3 * index]!,
        corners[3 * index + 1]!,
        corners[3 * index + 2]!,
      ]),
    ),
  );

const MESHES = new WeakMap<Solid, Mesh>();

const keptMesh = (solid: Solid, kernel: Kernel): Mesh => {
  const known = MESHES.get(solid);
  if (known !== undefined) return known;
  const made = meshSolid(solid, kernel);
  MESHES.set(solid, made);
  return made;
};
