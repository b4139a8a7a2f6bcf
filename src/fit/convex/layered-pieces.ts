// A layered recipe as convex prisms. What stands in another region's hole is left to that region's own hull, and layers of
// one outline become one prism: a search for what is near wants few pieces, and the kernel looks into hollows.

import { containsContour, containsPoint } from "../../geometry/containment.ts";
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
      outermost(regions.flatMap((region) => flatsOf(region, regions))).map((flat) => ({
        ...flat,
        from,
        to,
      })),
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

const flatsOf = (region: SolidRegion, all: readonly SolidRegion[]): readonly Flat[] => {
  const { contour: outline } = region.outline;
  const corners = outlineCorners(outline);
  const openings = region.holes.map(({ contour }) => contour);
  const filling: Filling = {
    kind: "outline",
    outline,
    openings,
    hollows: openings.filter((opening) => isEmpty(opening, all)),
  };
  if (isConvex(corners))
    return [{ corners, filling: openings.length === 0 ? { kind: "solid" } : filling }];
  const hull = convexHull(corners);
  return doubleArea(hull) <= (1 + MOST_AIR) * doubleArea(corners)
    ? [{ corners: hull, filling }]
    : convexPolygons(corners).map((part) => ({ corners: part, filling }));
};

/** Regions lie apart: one that stands in an opening has all its corners there. */
const isEmpty = (opening: Contour, all: readonly SolidRegion[]): boolean =>
  !all.some(({ outline }) => containsPoint(opening, outlineCorners(outline.contour)[0]!));

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

/** A place in an opening of either is no certain material; hollow is what is hollow in both. */
const both = (a: Filling, b: Filling): Filling => {
  if (a.kind === "unknown" || b.kind === "unknown") return { kind: "unknown" };
  if (a.kind === "solid") return b.kind === "solid" ? a : { ...b, hollows: [] };
  if (b.kind === "solid") return { ...a, hollows: [] };
  return {
    ...a,
    openings: [...a.openings, ...b.openings],
    hollows: [...within(a.hollows, b.hollows), ...within(b.hollows, a.hollows)],
  };
};

/** Those that lie in one of the others or are like it: such a one comes twice, which does no harm. */
const within = (hollows: readonly Contour[], others: readonly Contour[]): readonly Contour[] =>
  hollows.filter((hollow) => others.some((other) => containsContour(other, hollow)));
