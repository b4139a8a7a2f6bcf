// A layered recipe as convex prisms. What stands in another region's hole is left to that region's own hull, and layers of
// one outline become one prism: a search for what is near wants few pieces, and the kernel looks into hollows.

import type { Contour, Point } from "../../geometry/contour.ts";
import { convexHull } from "../../geometry/convex-hull.ts";
import type { LayeredSolid, SolidRegion } from "../../geometry/solid/solid.ts";
import { vector } from "../../geometry/space/vector.ts";
import { type ConvexPiece, convexPiece, type Filling } from "./convex-piece.ts";
import { convexPolygons, doubleArea, isConvex } from "./convex-polygons.ts";
import { outlineCorners } from "./outline-corners.ts";

export const layeredPieces = ({ layers }: LayeredSolid): readonly ConvexPiece[] =>
  joinedFlats(
    layers.flatMap(({ from, to, regions }) =>
      outermost(regions.flatMap(flatsOf)).map((flat) => ({ ...flat, from, to })),
    ),
  ).map(({ corners, filling, from, to }) =>
    convexPiece(
      corners.flatMap(({ x, y }) => [vector(x, y, from), vector(x, y, to)]),
      filling,
    ),
  );

interface Flat {
  readonly corners: readonly Point[];
  readonly filling: Filling;
}

interface Slab extends Flat {
  readonly from: number;
  readonly to: number;
}

/** The air that a hull may hold beside its outline, in parts of the outline's area, before it is cut into convex parts. */
const MOST_AIR = 0.05;

const flatsOf = ({ outline, holes }: SolidRegion): readonly Flat[] => {
  const corners = outlineCorners(outline.contour);
  const openings = holes.map(({ contour }) => contour);
  if (isConvex(corners)) return [{ corners, filling: fillingOf(outline.contour, openings) }];
  const filling: Filling = { kind: "outline", outline: outline.contour, openings };
  const hull = convexHull(corners);
  return doubleArea(hull) <= (1 + MOST_AIR) * doubleArea(corners)
    ? [{ corners: hull, filling }]
    : convexPolygons(corners).map((part) => ({ corners: part, filling }));
};

const fillingOf = (outline: Contour, openings: readonly Contour[]): Filling =>
  openings.length === 0 ? { kind: "solid" } : { kind: "outline", outline, openings };

/** Those that lie in no other's hull. */
const outermost = (flats: readonly Flat[]): readonly Flat[] =>
  flats.filter(
    (flat) =>
      !flats.some(
        (other) =>
          other !== flat && flat.corners.every((corner) => isInConvex(other.corners, corner)),
      ),
  );

const isInConvex = (corners: readonly Point[], { x, y }: Point): boolean =>
  corners.every((a, index) => {
    const b = corners[(index + 1) % corners.length]!;
    return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x) > 0;
  });

/** Slabs of the same corners that follow on one another. */
const joinedFlats = (slabs: readonly Slab[]): readonly Slab[] => {
  const joined: Slab[] = [];
  for (const slab of slabs) {
    const index = joined.findIndex((below) => below.to === slab.from && isSame(below, slab));
    const below = joined[index];
    if (below === undefined) joined.push(slab);
    else joined[index] = { ...below, to: slab.to, filling: both(below.filling, slab.filling) };
  }
  return joined;
};

const isSame = (a: Flat, b: Flat): boolean =>
  a.corners.length === b.corners.length &&
  a.corners.every(({ x, y }, index) => x === b.corners[index]!.x && y === b.corners[index]!.y);

/** A place in an opening of either is no certain material. */
const both = (a: Filling, b: Filling): Filling => {
  if (a.kind === "solid") return b;
  if (b.kind === "solid") return a;
  if (a.kind === "unknown" || b.kind === "unknown") return { kind: "unknown" };
  return { ...a, openings: [...a.openings, ...b.openings] };
};
