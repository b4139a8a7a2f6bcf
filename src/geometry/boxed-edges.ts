// Edges with their bounding boxes, so that pairs that are far apart are passed over without arithmetic.

import type { Contour, Path } from "./contour.ts";
import { edgeExtent } from "./edge.ts";
import { type Edge, edgesOf } from "./edges.ts";
import type { Extent } from "./extent.ts";

export interface BoxedEdge {
  readonly edge: Edge;
  readonly box: Extent;
}

/**
 * Kept by identity, for shapes that are asked again and again (contours never change). What is looked at once takes
 * `boxed`: a thousand letters kept alive cost the collector more than working them out.
 */
export const boxedEdgesOf = (shape: Contour | Path): readonly BoxedEdge[] => {
  const known = kept.get(shape);
  if (known !== undefined) return known;
  const edges = boxed(edgesOf(shape));
  kept.set(shape, edges);
  return edges;
};

export const boxed = (edges: readonly Edge[]): readonly BoxedEdge[] =>
  edges.map((edge) => ({ edge, box: edgeExtent(edge) }));

const kept = new WeakMap<Contour | Path, readonly BoxedEdge[]>();
