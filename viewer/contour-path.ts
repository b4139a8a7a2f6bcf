// Contours as the path data of an SVG drawing, y turned down, arcs as arcs. Takes millimetres, gives millimetres:
// the drawing's viewBox is in them, so that no transform is needed.

import type { Contour, Path } from "../src/geometry/contour.ts";
import { type Edge, edgesOf } from "../src/geometry/edges.ts";
import { decimal } from "../src/geometry/number.ts";

/** Finer than any screen: a tenth of a micrometre. */
const PLACES = 4;

export const contourData = (contour: Contour): string => `${runData(edgesOf(contour))}Z`;

export const pathData = (path: Path): string => runData(edgesOf(path));

function runData(edges: readonly Edge[]): string {
  const [first] = edges;
  if (first === undefined) return "";
  return `M${coordinates(first.from)}${edges.map(edgeData).join("")}`;
}

function edgeData(edge: Edge): string {
  if (edge.kind === "line") return `L${coordinates(edge.to)}`;
  const radius = decimal(edge.radius, PLACES);
  const large = edge.sweep > Math.PI ? 1 : 0;
  // y is turned over, so that what turns left in the panel turns left on the screen too: sweep flag 0.
  const clockwise = edge.turnsLeft ? 0 : 1;
  return `A${radius} ${radius} 0 ${large} ${clockwise} ${coordinates(edge.to)}`;
}

const coordinates = (at: { readonly x: number; readonly y: number }): string =>
  `${decimal(at.x, PLACES)} ${decimal(-at.y, PLACES)}`;
