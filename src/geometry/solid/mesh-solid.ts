// A recipe as triangles: single layers and lofts by @jscad/modeling, everything else by the kernel that is passed in.
// The same recipe gives the same bytes every time. Ask recipeFaults first: a recipe with faults stops the run.

import { invariant } from "../invariant.ts";
import { cleanMesh } from "./clean-mesh.ts";
import { isClosed } from "./is-closed.ts";
import { extrudedTriangles } from "./jscad-mesh.ts";
import { type Kernel, withKept } from "./kernel.ts";
import { kernelSolid, loftTriangles } from "./kernel-solid.ts";
import type { Mesh } from "./mesh.ts";
import type { Solid, SolidLayer } from "./solid.ts";
import { regionPolygons } from "./solid-outlines.ts";
import { joinDistance } from "./solid-tolerance.ts";
import { stackedTriangles } from "./stacked-mesh.ts";
import { steppedHeight } from "./stepped-height.ts";

export const meshSolid = (solid: Solid, kernel: Kernel): Mesh => {
  const simple = simpleMesh(solid, kernel);
  // An ear clipper cuts the caps of single layers, and may leave out a corner between two others: in 241 random layers it
  // never did, but a leak must not reach a printer.
  return simple !== null && isClosed(simple) ? simple : kernelMesh(solid, kernel);
};

/** null where the solid needs the kernel. */
const simpleMesh = (solid: Solid, kernel: Kernel): Mesh | null => {
  switch (solid.kind) {
    case "layered": {
      const [layer, ...others] = solid.layers;
      if (layer === undefined) return null;
      return others.length === 0 ? layerMesh(layer) : layersMesh(solid.layers, kernel);
    }
    case "lofted":
      return cleanMesh(loftTriangles(solid.sections));
    case "revolved":
    case "composed":
    case "placed":
      return null;
  }
};

const layersMesh = (layers: readonly SolidLayer[], kernel: Kernel): Mesh | null => {
  const triangles = stackedTriangles(layers, "material", kernel);
  return triangles === null ? null : cleanMesh(triangles);
};

const layerMesh = ({ from, to, regions }: SolidLayer): Mesh =>
  cleanMesh(
    extrudedTriangles(
      regions.flatMap((region) => regionPolygons(region, "material")),
      steppedHeight(from),
      steppedHeight(to),
    ),
  );

const kernelMesh = (solid: Solid, kernel: Kernel): Mesh =>
  withKept((keep) => {
    const built = kernelSolid(solid, "material", { kernel, keep });
    // As one piece: walls of different layers in one plane then lose the corners between them.
    const one = keep(built.asOriginal());
    const { vertProperties, triVerts, numProp } = keep(one.simplify(joinDistance)).getMesh();
    invariant(numProp === 3, "a mesh carries places alone");
    return cleanMesh({ corners: vertProperties, triangles: triVerts });
  });
