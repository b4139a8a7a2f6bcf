// A contour as the corners that its convex pieces are made of: on the curve, counter-clockwise. A curve that bows into the
// material takes few chords: its pieces then hold a little air, which is known of them.

import type { Contour, Point } from "../../geometry/contour.ts";
import { point } from "../../geometry/contour.ts";
import { pointAlong } from "../../geometry/edge.ts";
import { type ArcEdge, edgesOf } from "../../geometry/edges.ts";
import { degrees } from "../../geometry/quantity.ts";
import { counterClockwise } from "../../geometry/solid/facets.ts";
import { arcCosine, direction } from "../../geometry/trigonometry.ts";
import { hullChord } from "../fit-tolerance.ts";

export const outlineCorners = (contour: Contour): readonly Point[] => {
  if (contour.kind === "circle") return circleCorners(contour.centre, contour.radius);
  return edgesOf(counterClockwise(contour)).flatMap((edge) => {
    if (edge.kind === "line") return [edge.from];
    const count = edge.turnsLeft ? chordsOf(edge) : Math.min(FEW, chordsOf(edge));
    return Array.from({ length: count }, (_, index) =>
      index === 0 ? edge.from : pointAlong(edge, index / count),
    );
  });
};

const FEW = 3;

/** A multiple of four, so that a disc is as wide as its diameter both ways. */
const circleCorners = (centre: Point, radius: number): readonly Point[] => {
  const count = 4 * Math.max(1, Math.ceil((2 * Math.PI) / chordAngle(radius) / 4));
  return Array.from({ length: count }, (_, index) => {
    const { x, y } = direction(degrees((360 * index) / count));
    return point(centre.x + radius * x, centre.y + radius * y);
  });
};

const chordsOf = ({ radius, sweep }: ArcEdge): number =>
  Math.max(1, Math.ceil(sweep / chordAngle(radius)));

const chordAngle = (radius: number): number =>
  2 * arcCosine(Math.max(Math.SQRT1_2, 1 - hullChord / radius));
