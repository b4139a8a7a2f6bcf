// Builds a recipe in the solid kernel. Every piece is looked at before it is put to another: the kernel drops a piece
// with a broken number without a word.

import type { Manifold } from "manifold-3d";
import type { Contour, Point } from "../contour.ts";
import { invariant } from "../invariant.ts";
import { mm } from "../quantity.ts";
import { cleanMesh, type Triangles } from "./clean-mesh.ts";
import {
  circumscribed,
  counterClockwise,
  equalArea,
  facetCorners,
  facetCounts,
  onGrid,
  turnFacets,
} from "./facets.ts";
import { isClosed } from "./is-closed.ts";
import { loftedTriangles, type SectionPolygons } from "./jscad-mesh.ts";
import type { Keep, Kernel } from "./kernel.ts";
import type { Mesh } from "./mesh.ts";
import type { LoftSection, PlacedSolid, RevolvedSolid, Solid, SolidLayer } from "./solid.ts";
import { regionPolygons, type Use } from "./solid-outlines.ts";
import { stackedTriangles } from "./stacked-mesh.ts";
import { steppedHeight } from "./stepped-height.ts";
import { turnMatrix } from "./turn.ts";

export interface Workbench {
  readonly kernel: Kernel;
  readonly keep: Keep;
}

export const kernelSolid = (solid: Solid, use: Use, bench: Workbench): Manifold =>
  sound(builtSolid(solid, use, bench), solid.kind);

const builtSolid = (solid: Solid, use: Use, bench: Workbench): Manifold => {
  const { kernel, keep } = bench;
  switch (solid.kind) {
    case "layered":
      return kernelLayered(solid.layers, use, bench);
    case "revolved":
      return kernelRevolved(solid, bench);
    case "lofted":
      return kernelMesh(cleanMesh(loftTriangles(solid.sections)), bench);
    case "composed": {
      const other = use === "material" ? "cutter" : "material";
      const added = united(
        solid.add.map((piece) => kernelSolid(piece, use, bench)),
        bench,
      );
      if (solid.cut.length === 0) return added;
      const taken = united(
        solid.cut.map((piece) => kernelSolid(piece, other, bench)),
        bench,
      );
      return keep(kernel.Manifold.difference(added, taken));
    }
    case "placed":
      return kernelPlaced(solid, use, bench);
  }
};

/** Triangles of a loft, from @jscad/modeling. */
export const loftTriangles = (sections: readonly LoftSection[]): Triangles =>
  loftedTriangles(sectionPolygons(sections));

const sound = (solid: Manifold, what: string): Manifold => {
  const status = solid.status();
  invariant(status === "NoError", `a ${what} piece has finite numbers and closes (${status})`);
  invariant(!solid.isEmpty(), `a ${what} piece has material`);
  invariant(Number.isFinite(solid.volume()), `a ${what} piece has a finite volume`);
  return solid;
};

const united = (pieces: readonly Manifold[], { kernel, keep }: Workbench): Manifold => {
  const [first] = pieces;
  invariant(first !== undefined, "a solid has a piece");
  return pieces.length === 1 ? first : keep(kernel.Manifold.union(pieces));
};

const kernelLayered = (layers: readonly SolidLayer[], use: Use, bench: Workbench): Manifold => {
  const triangles = stackedTriangles(layers, use, bench.kernel);
  const mesh = triangles === null ? null : cleanMesh(triangles);
  if (mesh !== null && isClosed(mesh)) return kernelMesh(mesh, bench);
  return united(
    layers.map((layer) => kernelLayer(layer, use, bench)),
    bench,
  );
};

const kernelLayer = ({ from, to, regions }: SolidLayer, use: Use, bench: Workbench): Manifold => {
  const { kernel, keep } = bench;
  const foot = steppedHeight(from);
  const polygons = regions.flatMap((region) => regionPolygons(region, use)).map(asPairs);
  const standing = keep(kernel.Manifold.extrude(polygons, steppedHeight(to) - foot));
  return sound(keep(standing.translate(0, 0, foot)), "layer");
};

const asPairs = (polygon: readonly Point[]): [number, number][] =>
  polygon.map(({ x, y }) => [x, y]);

const kernelRevolved = (solid: RevolvedSolid, { kernel, keep }: Workbench): Manifold => {
  const { at, profile, clearance } = solid;
  const shape = counterClockwise(profile);
  const outermost = mm(shape.kind === "loop" ? Math.max(...shape.vertices.map(({ x }) => x)) : 0);
  const count = turnFacets(outermost, clearance);
  const factor = clearance === "clear" ? circumscribed(count) : equalArea(count);
  const corners = facetCorners(shape, facetCounts(shape, "none"), "none").map(
    ({ x, y }): [number, number] => [Math.max(0, x) * factor, steppedHeight(y)],
  );
  const turned = keep(kernel.Manifold.revolve([corners], count));
  return keep(turned.translate(at.x, at.y, 0));
};

const kernelPlaced = ({ solid, turn, to }: PlacedSolid, use: Use, bench: Workbench): Manifold => {
  const { x, y, z } = turnMatrix(turn);
  const piece = kernelSolid(solid, use, bench);
  return bench.keep(
    // Column by column.
    piece.transform([x.x, x.y, x.z, 0, y.x, y.y, y.z, 0, z.x, z.y, z.z, 0, to.x, to.y, to.z, 1]),
  );
};

const kernelMesh = (mesh: Mesh, { kernel, keep }: Workbench): Manifold =>
  keep(
    new kernel.Manifold(
      new kernel.Mesh({
        numProp: 3,
        vertProperties: mesh.positions,
        triVerts: mesh.triangles,
      }),
    ),
  );

/** Every edge takes as many facets as its longest arc needs in any section. */
const sectionPolygons = (sections: readonly LoftSection[]): readonly SectionPolygons[] => {
  const contours = sections.map(({ outline, holes }) => [outline, ...holes].map(counterClockwise));
  const counts = contours[0]!.map((_, index) =>
    mostFacets(contours.map((section) => section[index]!)),
  );
  return sections.map(({ height }, section) => ({
    height: steppedHeight(height),
    polygons: contours[section]!.map((contour, index) => {
      const corners = facetCorners(contour, counts[index]!, "none").map(onGrid);
      return index === 0 ? corners : corners.toReversed();
    }),
  }));
};

const mostFacets = (contours: readonly Contour[]): readonly number[] => {
  const counts = contours.map((contour) => facetCounts(contour, "none"));
  return counts[0]!.map((_, edge) => Math.max(...counts.map((count) => count[edge] ?? 0)));
};
