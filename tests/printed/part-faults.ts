// What is wrong with the solids of a printed part, as a reader that shares no code with the product and admesh find it in their
// STL: open or flat triangles, shells too many, a volume that is not the recipe's.

import { stlFile } from "../../src/export/stl.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { recipeFaults } from "../../src/geometry/solid/recipe-faults.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import { loosePiecesOf } from "../../src/parts/printed/loose-pieces.ts";
import type { PrintedPart } from "../../src/parts/printed/printed-part.ts";
import { admeshFaults } from "../support/admesh.ts";
import { readStlStrictly } from "../support/stl-reader.ts";

/** One sentence for everything that is wrong with a part's bodies. */
export const partFaults = (part: PrintedPart, kernel: Kernel): readonly string[] =>
  part.pieces.flatMap((piece) =>
    piece.bodies.flatMap(({ name, solid }) => {
      const who = `${part.id} ${piece.number} ${name}`;
      const recipe = recipeFaults(solid);
      if (recipe.length > 0) return recipe.map((fault) => `${who}: ${fault}`);
      const stl = stlFile(meshSolid(solid, kernel));
      const read = readStlStrictly(stl);
      const volume = recipeVolume(solid);
      // A crowded panel may cut its spacer through: the program tells in how many pieces.
      const told = loosePiecesOf(solid);
      return [
        ...read.faults.map((fault) => `${who}: ${fault}`),
        ...admeshFaults(stl, told).map((fault) => `${who}: admesh: ${fault}`),
        ...(read.shells === told ? [] : [`${who}: ${read.shells} shells, ${told} told`]),
        ...(Math.abs(read.volume - volume) <= volume / 1000
          ? []
          : [`${who}: volume ${read.volume} for ${volume}`]),
      ];
    }),
  );
