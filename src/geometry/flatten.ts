// Arcs as chords whose height stays within a stated tolerance; the corners lie on the arc.
// For what can't take arcs (polygon operations, meshes, screens): never for a cut file.

import type { Contour, Path, Point } from "./contour.ts";
import { pointAlong } from "./edge.ts";
import { type ArcEdge, type Edge, edgesOf } from "./edges.ts";
import { invariant } from "./invariant.ts";
import { arcCosine } from "./trigonometry.ts";

/** Corners of the contour as a closed polygon, the first not repeated. */
export const flattened = (contour: Contour, tolerance: number): Point[] =>
  edgesOf(contour).flatMap((edge) => chordStarts(edge, tolerance));

/** Corners of the stroke, both ends included. */
export const flattenedPath = (stroke: Path, tolerance: number): Point[] => {
  const edges = edgesOf(stroke);
  const last = edges.at(-1);
  const corners = edges.flatMap((edge) => chordStarts(edge, tolerance));
  return last === undefined ? corners : [...corners, last.to];
};

/** Where the edge's chords start; its end is the next edge's. */
export const chordStarts = (edge: Edge, tolerance: number): Point[] => {
  if (edge.kind === "line") return [edge.from];
  const count = chordCount(edge, tolerance);
  const starts: Point[] = [edge.from];
  for (let index = 1; index < count; index += 1) starts.push(pointAlong(edge, index / count));
  return starts;
};

const chordCount = (arc: ArcEdge, tolerance: number): number => {
  invariant(tolerance > 0, "a chord tolerance is positive");
  const cosine = Math.max(0, 1 - tolerance / arc.radius);
  return Math.max(1, Math.ceil(arc.sweep / (2 * arcCosine(cosine))));
};
