// What every outline, hole and stroke is made of: lines and circular arcs, in millimetres.
// An edge's arc is its bulge, tan(included angle / 4), positive when it turns counter-clockwise:
// the same number that a DXF polyline carries, so that nothing is converted on the way out.

import { type Mm, mm } from "./quantity.ts";

export interface Point {
  readonly x: Mm;
  readonly y: Mm;
}

/** A corner of a loop or path; `bulge` belongs to the edge from here to the next vertex (0 is straight). */
export interface Vertex {
  readonly x: Mm;
  readonly y: Mm;
  readonly bulge: number;
}

export interface Circle {
  readonly kind: "circle";
  readonly centre: Point;
  readonly radius: Mm;
}

/** A closed run of edges. Counter-clockwise where it bounds material, clockwise where it bounds a hole. */
export interface Loop {
  readonly kind: "loop";
  readonly vertices: readonly Vertex[];
}

/** Anything closed. A whole circle stays a circle from the catalogue to the file. */
export type Contour = Circle | Loop;

/** An open stroke: a single-line letter, a tick, a bracket. The last vertex's bulge is 0. */
export interface Path {
  readonly kind: "path";
  readonly vertices: readonly Vertex[];
}

/** Material with holes. Holes lie inside the outline and apart from each other. */
export interface Region {
  readonly outline: Contour;
  readonly holes: readonly Contour[];
}

export const point = (x: number, y: number): Point => ({ x: mm(x), y: mm(y) });

export const vertex = (x: number, y: number, bulge = 0): Vertex => ({ x: mm(x), y: mm(y), bulge });

export const circle = (centre: Point, radius: number): Circle => ({
  kind: "circle",
  centre,
  radius: mm(radius),
});

export const loop = (vertices: readonly Vertex[]): Loop => ({ kind: "loop", vertices });

export const path = (vertices: readonly Vertex[]): Path => ({ kind: "path", vertices });
