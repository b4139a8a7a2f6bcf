// Two layers on one another whose outlines are one, touch, share a part or cross.

import { circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { type SolidRegion, solidRegion } from "../../src/geometry/solid/solid.ts";

export const box = (minX: number, minY: number, maxX: number, maxY: number): SolidRegion =>
  solidRegion({ outline: rectangle(extent(minX, minY, maxX, maxY)), holes: [] });

export const disc = (x: number, y: number, radius: number): SolidRegion =>
  solidRegion({ outline: circle(point(x, y), radius), holes: [] });

/** A bulge is the tangent of a quarter of the sweep, here of 240 degrees: tan 60° = √3. */
const bulgeRight = Math.sqrt(3);

const ring: SolidRegion = solidRegion({
  outline: rectangle(extent(0, 0, 40, 30)),
  holes: [rectangle(extent(10, 10, 20, 20))],
});

const notched = loop([
  vertex(0, 0),
  vertex(40, 0),
  vertex(40, 10),
  vertex(36, 10, -1),
  vertex(36, 20),
  vertex(40, 20),
  vertex(40, 30),
  vertex(0, 30),
]);

/** The frame with a way out through its right side. */
const gapped: SolidRegion = solidRegion({
  outline: loop([
    vertex(0, 0),
    vertex(40, 0),
    vertex(40, 12),
    vertex(20, 12),
    vertex(20, 10),
    vertex(10, 10),
    vertex(10, 20),
    vertex(20, 20),
    vertex(20, 17),
    vertex(40, 17),
    vertex(40, 30),
    vertex(0, 30),
  ]),
  holes: [],
});

/** The disc of radius 8 about 24, 5 less what lies left of x = 20: an arc on the disc's own circle, faceted by itself. */
const cutDisc: SolidRegion = solidRegion({
  outline: loop([vertex(20, 5 - Math.sqrt(48), bulgeRight), vertex(20, 5 + Math.sqrt(48))]),
  holes: [],
});

export const touchingLayers: readonly (readonly [
  string,
  readonly SolidRegion[],
  readonly SolidRegion[],
])[] = [
  ["one on one", [box(0, 0, 40, 30)], [box(0, 0, 40, 30)]],
  ["a notch above", [box(0, 0, 40, 30)], [solidRegion({ outline: notched, holes: [] })]],
  ["a notch below", [solidRegion({ outline: notched, holes: [] })], [box(0, 0, 40, 30)]],
  ["a cross", [box(0, 0, 40, 10)], [box(10, -10, 20, 30)]],
  ["a corner shared", [box(0, 0, 40, 30)], [box(0, 0, 12, 9)]],
  ["a disc over an edge", [box(0, 0, 40, 10)], [disc(24, 5, 8)]],
  ["a disc that touches an edge from within", [box(0, 0, 40, 10)], [disc(24, 5, 5)]],
  ["a post at a hole's corner", [ring], [box(20, 20, 30, 28)]],
  ["two posts", [box(0, 0, 40, 10)], [disc(8, 5, 3), disc(30, 5, 4)]],
  ["two feet", [disc(8, 5, 3), disc(30, 5, 4)], [box(0, 0, 40, 10)]],
  ["a disc cut short on the whole disc", [disc(24, 5, 8)], [cutDisc]],
  ["two posts in the corners of a hole", [ring], [box(4, 4, 10, 10), box(20, 20, 30, 28)]],
  ["a frame on a frame with a gap", [gapped], [ring]],
  ["a frame with a gap on a frame", [ring], [gapped]],
];
