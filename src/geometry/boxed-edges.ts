// Edges with their bounding boxes, so that pairs that are far apart are passed over without arithmetic.

import type { Contour, Path } from "./contour.ts";
import { edgeExtent } from "./edge.ts";
import { type Edge, edgesOf } from "./edges.ts";
import type { Extent } from "./extent.ts";

export interface BoxedEdge {
  readonly edge: Edge;
  readonly box: Extent;
}

export const boxedEdgesOf = (shape: Contour | Path): readonly BoxedEdge[] => {
  const known = kept.get(shape);
  if (known !== undefined) return known;
  const boxed = edgesOf(shape).map((edge) => ({ edge, box: edgeExtent(edge) }));
  kept.set(shape, boxed);
  return boxed;
};

const kept = new WeakMap<Contour | Path, readonly BoxedEdge[]>();
