// All places within a distance of an outline, as simple shapes that overlap: a strip for every edge, a disc for every
// vertex. Exact: the strips of arcs are bounded by arcs.

import { arcBulge } from "./arc.ts";
import { type Contour, circle, loop, type Point, vertex } from "./contour.ts";
import { headingAt } from "./edge.ts";
import { type ArcEdge, type Edge, edgesOf, type LineEdge } from "./edges.ts";
import { samePlace } from "./tolerance.ts";

/** `distance` is half the thickness. */
export const thickOutline = (contour: Contour, distance: number): readonly Contour[] =>
  edgesOf(contour).flatMap((edge) => [stripOf(edge, distance), circle(edge.from, distance)]);

const stripOf = (edge: Edge, distance: number): Contour =>
  edge.kind === "line" ? lineStrip(edge, distance) : arcStrip(edge, distance);

const lineStrip = (line: LineEdge, distance: number): Contour => {
  const heading = headingAt(line, "from");
  const right = (at: Point, aside: number): ReturnType<typeof vertex> =>
    vertex(at.x + heading.y * aside, at.y - heading.x * aside);
  return loop([
    right(line.from, distance),
    right(line.to, distance),
    right(line.to, -distance),
    right(line.from, -distance),
  ]);
};

/** Between the radii r - d and r + d; a sector where the arc is tighter than the distance. */
const arcStrip = (arc: ArcEdge, distance: number): Contour => {
  const bulge = arcBulge(arc.centre, arc.from, arc.to, arc.turnsLeft);
  const at = (end: Point, radius: number, turn: number): ReturnType<typeof vertex> => {
    const scale = radius / arc.radius;
    return vertex(
      arc.centre.x + (end.x - arc.centre.x) * scale,
      arc.centre.y + (end.y - arc.centre.y) * scale,
      turn,
    );
  };
  const outer = [at(arc.from, arc.radius + distance, bulge), at(arc.to, arc.radius + distance, 0)];
  const inner = arc.radius - distance;
  return inner > samePlace
    ? loop([...outer, at(arc.to, inner, -bulge), at(arc.from, inner, 0)])
    : loop([...outer, at(arc.from, 0, 0)]);
};
