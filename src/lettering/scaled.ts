// Glyph shapes scaled about the origin and then moved: what setting a legend does to each kept glyph.
// Bulges are ratios, so arcs stay the same arcs; a scale is always positive, so loops keep their direction.

import type { Contour, Path, Region, Vertex } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { mm } from "../geometry/quantity.ts";

export interface Scaling {
  readonly scale: number;
  readonly dx: number;
  readonly dy: number;
}

export const scaledRegion = (region: Region, place: Scaling): Region => ({
  outline: scaledContour(region.outline, place),
  holes:
    region.holes.length === 0
      ? region.holes
      : region.holes.map((hole) => scaledContour(hole, place)),
});

export const scaledPath = (stroke: Path, place: Scaling): Path => ({
  kind: "path",
  vertices: scaledVertices(stroke.vertices, place),
});

export const scaledExtent = (box: Extent, { scale, dx, dy }: Scaling): Extent => ({
  minX: mm(box.minX * scale + dx),
  minY: mm(box.minY * scale + dy),
  maxX: mm(box.maxX * scale + dx),
  maxY: mm(box.maxY * scale + dy),
});

const scaledContour = (contour: Contour, place: Scaling): Contour => {
  if (contour.kind === "loop")
    return { kind: "loop", vertices: scaledVertices(contour.vertices, place) };
  const { scale, dx, dy } = place;
  const { centre, radius } = contour;
  return {
    kind: "circle",
    centre: { x: mm(centre.x * scale + dx), y: mm(centre.y * scale + dy) },
    radius: mm(radius * scale),
  };
};

const scaledVertices = (
  vertices: readonly Vertex[],
  { scale, dx, dy }: Scaling,
): readonly Vertex[] => {
  const placed: Vertex[] = [];
  for (const { x, y, bulge } of vertices)
    placed.push({ x: mm(x * scale + dx), y: mm(y * scale + dy), bulge });
  return placed;
};
