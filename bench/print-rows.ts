// The printed parts' rows: recipes of the example console's parts, and their meshes. The yardstick of a mesh is the bare
// kernel, which extrudes the outlines of the same part's layers and joins nothing.

import { join } from "node:path";
import Module from "manifold-3d";
import { exampleFiles } from "../scripts/example-files.ts";
import { flattened } from "../src/geometry/flatten.ts";
import type { Kernel } from "../src/geometry/solid/kernel.ts";
import { meshSolid } from "../src/geometry/solid/mesh-solid.ts";
import { isLayeredPrism, type Solid } from "../src/geometry/solid/solid.ts";
import { compile, type Library, type PanelProject } from "../src/project.ts";
import { measured, type Row } from "./harness.ts";

const root = join(import.meta.dirname, "..");

export async function printRows(library: Library): Promise<readonly Row[]> {
  const kernel = await Module();
  kernel.setup();
  const { panels } = trainer(library);
  const solids = panels.map(solidsOf);
  const largest = solids.flat().toSorted((a, b) => cornersOf(b) - cornersOf(a))[0];
  return [
    ...(largest === undefined ? [] : [meshRow("mesh the largest printed part", [largest], kernel)]),
    meshRow(`mesh all printed parts of ${panels.length} panels`, solids.flat(), kernel),
  ];
}

/** The shipped example, read as the program reads it. */
function trainer(library: Library): ReturnType<typeof compile> {
  const files = new Map(Object.entries(exampleFiles(root)["tug-trainer"] ?? {}));
  return compile({ entry: "console.yaml", files }, library);
}

const solidsOf = ({ printedParts }: PanelProject): readonly Solid[] =>
  printedParts.flatMap(({ bodies }) => bodies.map(({ solid }) => solid));

function meshRow(name: string, solids: readonly Solid[], kernel: Kernel): Row {
  return measured({
    name: `${name} (yardstick: the bare kernel extrudes the same outlines)`,
    run: () => solids.map((solid) => meshSolid(solid, kernel)),
    yardstick: () => solids.map((solid) => extruded(solid, kernel)),
    warmUp: 1,
    rounds: 5,
  });
}

/** Chords as fine as the meshes' own. */
const CHORD = 0.01;

function extruded(solid: Solid, kernel: Kernel): void {
  if (!isLayeredPrism(solid)) return;
  for (const { from, to, regions } of solid.layers)
    for (const { outline, holes } of regions) {
      const loops = [outline, ...holes].map(({ contour }) =>
        flattened(contour, CHORD).map(({ x, y }): [number, number] => [x, y]),
      );
      kernel.Manifold.extrude(loops, to - from).delete();
    }
}

const cornersOf = (solid: Solid): number =>
  isLayeredPrism(solid)
    ? solid.layers.reduce(
        (sum, { regions }) => sum + regions.reduce((all, { holes }) => all + holes.length + 1, 0),
        0,
      )
    : 0;
