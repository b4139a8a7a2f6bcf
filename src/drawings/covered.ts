// Whether an area of a drawing lies wholly under another that is painted over it. Takes a contour and regions; a cover counts
// only where it is convex, straight-edged and without a hole, as hulls and boards are: what may be seen is never called covered.

import type { Contour, Point, Region, Vertex } from "../geometry/contour.ts";
import { contourExtent } from "../geometry/measure.ts";

/** A hundredth of a hair line on paper. */
const SEEN = 0.002;

export const isCovered = (outline: Contour, by: readonly Region[]): boolean => {
  const corners = cornersOf(outline);
  return by.some((cover) => {
    const sides = coverOf(cover);
    return (
      sides.length > 2 && corners.every((corner) => sides.every((side) => isLeftOf(corner, side)))
    );
  });
};

/** Of what is round, those of its box. */
const cornersOf = (contour: Contour): readonly Point[] => {
  if (contour.kind === "loop" && contour.vertices.every(({ bulge }) => bulge === 0))
    return contour.vertices;
  const { minX, minY, maxX, maxY } = contourExtent(contour);
  return [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
};

type Side = readonly [Vertex, Vertex];

/** Empty for what covers nothing for certain. */
const coverOf = ({ outline, holes }: Region): readonly Side[] => {
  if (outline.kind === "circle" || holes.length > 0) return [];
  const { vertices } = outline;
  const sides = vertices.map(
    (from, index): Side => [from, vertices[(index + 1) % vertices.length]!],
  );
  const isConvex =
    vertices.every(({ bulge }) => bulge === 0) &&
    sides.every((side) => vertices.every((corner) => isLeftOf(corner, side)));
  return isConvex ? sides : [];
};

const isLeftOf = ({ x, y }: Point, [from, to]: Side): boolean => {
  const along = { x: to.x - from.x, y: to.y - from.y };
  const length = Math.sqrt(along.x * along.x + along.y * along.y);
  return along.x * (y - from.y) - along.y * (x - from.x) >= -SEEN * length;
};
