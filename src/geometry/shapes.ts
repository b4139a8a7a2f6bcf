// Ready-made outlines: rectangles, rounded rectangles, polygons, slots. All run counter-clockwise.
// Sizes that can't be (a corner radius over half the side) are the caller's to refuse first.

import { type Contour, circle, type Loop, loop, type Point, vertex } from "./contour.ts";
import { type Extent, extentHeight, extentWidth } from "./extent.ts";
import { invariant } from "./invariant.ts";
import { contourArea, reversedContour } from "./measure.ts";
import type { Degrees, Mm } from "./quantity.ts";
import { arithmeticNoise } from "./tolerance.ts";
import { direction } from "./trigonometry.ts";

export const rectangle = (box: Extent): Loop =>
  loop([
    vertex(box.minX, box.minY),
    vertex(box.maxX, box.minY),
    vertex(box.maxX, box.maxY),
    vertex(box.minX, box.maxY),
  ]);

/** A rectangle with corners of radius `corner`: 0 gives a sharp one, half the shorter side a slot's round ends. */
export const roundedRectangle = (box: Extent, corner: number): Loop => {
  invariant(corner >= 0, "a corner radius is not negative");
  invariant(corner <= largestCorner(box) + arithmeticNoise, "a corner fits its rectangle");
  if (corner === 0) return rectangle(box);
  const { minX, minY, maxX, maxY } = box;
  const hasLevelSides = extentWidth(box) - 2 * corner > arithmeticNoise;
  const hasUprightSides = extentHeight(box) - 2 * corner > arithmeticNoise;
  const corners = [
    ...(hasLevelSides ? [vertex(minX + corner, minY)] : []),
    vertex(maxX - corner, minY, quarterBulge),
    ...(hasUprightSides ? [vertex(maxX, minY + corner)] : []),
    vertex(maxX, maxY - corner, quarterBulge),
    ...(hasLevelSides ? [vertex(maxX - corner, maxY)] : []),
    vertex(minX + corner, maxY, quarterBulge),
    ...(hasUprightSides ? [vertex(minX, maxY - corner)] : []),
    vertex(minX, minY + corner, quarterBulge),
  ];
  return loop(corners);
};

/** The largest corner radius that `roundedRectangle` takes for this box. */
export const largestCorner = (box: Extent): number =>
  Math.min(extentWidth(box), extentHeight(box)) / 2;

/** Straight lines through the points, turned counter-clockwise where they run the other way. */
export const polygon = (points: readonly Point[]): Loop => {
  invariant(points.length >= 3, "a polygon has three points");
  const shape = loop(points.map((corner) => vertex(corner.x, corner.y)));
  return contourArea(shape) < 0 ? reversedContour(shape) : shape;
};

export interface SlotSize {
  /** Over the round ends. */
  readonly length: Mm;
  readonly width: Mm;
  /** Of the long axis, counter-clockwise from +x. */
  readonly turn: Degrees;
}

/** A slot with round ends; a circle where it is as long as it is wide. */
export const slotContour = (centre: Point, size: SlotSize): Contour => {
  invariant(size.width > 0, "a slot has width");
  invariant(size.length >= size.width - arithmeticNoise, "a slot is not shorter than wide");
  const reach = (size.length - size.width) / 2;
  const radius = size.width / 2;
  if (reach <= arithmeticNoise) return circle(centre, radius);
  const along = direction(size.turn);
  const corner = (end: number, side: number, bulge: number): ReturnType<typeof vertex> =>
    vertex(
      centre.x + end * reach * along.x - side * radius * along.y,
      centre.y + end * reach * along.y + side * radius * along.x,
      bulge,
    );
  return loop([corner(-1, -1, 0), corner(1, -1, 1), corner(1, 1, 0), corner(-1, 1, 1)]);
};

/** tan(90° / 4): a quarter turn's bulge. */
const quarterBulge = Math.sqrt(2) - 1;
