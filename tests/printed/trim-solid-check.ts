// A recipe meshed and read back as a file of triangles by a reader of its own: what a slicer will see.

import { stlFile } from "../../src/export/stl.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { recipeFaults } from "../../src/geometry/solid/recipe-faults.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import type { PrintedPart } from "../../src/parts/printed/printed-part.ts";
import { readStlStrictly, type StlReading } from "../support/stl-reader.ts";

export interface Printed extends StlReading {
  /** Sentences about the recipe; empty for one that can be meshed. */
  readonly recipe: readonly string[];
  /** How far the mesh's volume is from the recipe's, as a share of it. */
  readonly strays: number;
}

export const printed = (part: PrintedPart, kernel: Kernel): Printed => {
  const { solid } = part.bodies[0]!;
  const reading = readStlStrictly(stlFile(meshSolid(solid, kernel)));
  const volume = recipeVolume(solid);
  return {
    ...reading,
    recipe: recipeFaults(solid),
    strays: Math.abs(reading.volume - volume) / volume,
  };
};

/** Area of a rectangle with round corners. */
export const rounded = (width: number, height: number, corner: number): number =>
  width * height - (4 - Math.PI) * corner * corner;
