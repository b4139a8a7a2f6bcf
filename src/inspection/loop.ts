// Loops of edges as the inspection measures them: box, area, length, and how far apart two loops run.

import { type Contour, type Point, point } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { mm } from "../geometry/quantity.ts";
import {
  between,
  edgeExtent,
  edgeLength,
  edgeOfCircle,
  edgeSweptArea,
  edgesOfVertices,
} from "./edge.ts";
import type { Edge, ReadLoop } from "./read-file.ts";

/** A run of edges as a loop; null where there are none. */
export const loopOfEdges = (edges: readonly Edge[]): ReadLoop | null => {
  const first = edges[0];
  const last = edges[edges.length - 1];
  if (first === undefined || last === undefined) return null;
  return {
    edges,
    gap: between(last.to, first.from),
    chains: 1,
    box: boxOfEdges(edges, first),
  };
};

/** What is no number stays none: Math.min and Math.max hand it on. */
const boxOfEdges = (edges: readonly Edge[], first: Edge): Extent => {
  let { minX, minY, maxX, maxY } = edgeExtent(first);
  for (let index = 1; index < edges.length; index += 1) {
    const box = edgeExtent(edges[index]!);
    minX = mm(Math.min(minX, box.minX));
    minY = mm(Math.min(minY, box.minY));
    maxX = mm(Math.max(maxX, box.maxX));
    maxY = mm(Math.max(maxY, box.maxY));
  }
  return { minX, minY, maxX, maxY };
};

/** The edges of a closed contour. */
export const edgesOfContour = (contour: Contour): readonly Edge[] =>
  contour.kind === "circle"
    ? [edgeOfCircle(contour.centre, contour.radius)]
    : edgesOfVertices(contour.vertices, true);

/** Signed area, positive counter-clockwise. */
export const loopArea = (edges: readonly Edge[]): number => {
  const first = edges[0];
  const last = edges[edges.length - 1];
  if (first === undefined || last === undefined) return 0;
  let twice = last.to.x * first.from.y - first.from.x * last.to.y;
  for (const edge of edges) twice += edgeSweptArea(edge);
  return twice / 2;
};

export const loopLength = (edges: readonly Edge[]): number =>
  edges.reduce((length, edge) => length + edgeLength(edge), 0);

export const centreOfBox = (box: Extent): Point =>
  point((box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2);
