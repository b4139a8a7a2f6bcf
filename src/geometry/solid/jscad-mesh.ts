// Single layers and lofts as triangles, by @jscad/modeling. Takes polygons; gives corners and triangles that still
// have to be joined into a mesh.

import modeling from "@jscad/modeling";
import type { Point } from "../contour.ts";
import type { Triangles } from "./clean-mesh.ts";

type Polygon = readonly Point[];

/** Outlines counter-clockwise and holes clockwise, from height to height. */
export const extrudedTriangles = (
  polygons: readonly Polygon[],
  from: number,
  to: number,
): Triangles => {
  const sides = polygons.flatMap((polygon) =>
    sidesOf(polygon).map(([start, end]): [[number, number], [number, number]] => [
      [start.x, start.y],
      [end.x, end.y],
    ]),
  );
  const solid = modeling.extrusions.extrudeLinear(
    { height: to - from },
    modeling.geometries.geom2.create(sides),
  );
  // Heights come back as 0 and the difference: the layer's own two numbers are put in their place.
  return trianglesOf(solid, (height) => (height === 0 ? from : to));
};

export interface SectionPolygons {
  readonly height: number;
  readonly polygons: readonly Polygon[];
}

/** Sections of the same polygons, corner to corner, the lowest first. */
export const loftedTriangles = (sections: readonly SectionPolygons[]): Triangles => {
  const slices = sections.map(({ height, polygons }) => ({
    edges: polygons.flatMap((polygon) =>
      sidesOf(polygon).map(([start, end]): [[number, number, number], [number, number, number]] => [
        [start.x, start.y, height],
        [end.x, end.y, height],
      ]),
    ),
  }));
  const solid = modeling.extrusions.extrudeFromSlices(
    { numberOfSlices: slices.length, callback: (_progress, index) => slices[index]! },
    slices[0]!,
  );
  return trianglesOf(solid, (height) => height);
};

const sidesOf = (polygon: Polygon): readonly (readonly [Point, Point])[] =>
  polygon.map((start, index) => [start, polygon[(index + 1) % polygon.length]!] as const);

type JscadSolid = ReturnType<typeof modeling.geometries.geom3.create>;

const trianglesOf = (solid: JscadSolid, heightOf: (height: number) => number): Triangles => {
  const corners: number[] = [];
  const triangles: number[] = [];
  for (const { vertices } of modeling.geometries.geom3.toPolygons(solid)) {
    const first = corners.length / 3;
    for (const [x, y, z] of vertices) corners.push(x, y, heightOf(z));
    for (let corner = 2; corner < vertices.length; corner += 1)
      triangles.push(first, first + corner - 1, first + corner);
  }
  return { corners, triangles };
};
