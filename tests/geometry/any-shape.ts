// Random simple outlines for the properties: stars round the origin whose sides are lines and gentle arcs, so that
// they never cross themselves, and rectangles and circles that overlap often.

import fc from "fast-check";
import {
  type Contour,
  circle,
  type Loop,
  loop,
  point,
  vertex,
} from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { rectangle, roundedRectangle } from "../../src/geometry/shapes.ts";
import { loopFaults } from "../../src/geometry/simple.ts";

export const coordinate = fc.integer({ min: -50_000, max: 50_000 }).map((value) => value / 1000);

const spoke = fc.record({
  reach: fc.integer({ min: 5000, max: 30_000 }).map((value) => value / 1000),
  bulge: fc.oneof(
    fc.constant(0),
    fc.integer({ min: -250, max: 400 }).map((value) => value / 1000),
  ),
});

/** A simple counter-clockwise loop of 4 to 9 lines and arcs round the origin. */
export const anyLoop: fc.Arbitrary<Loop> = fc
  .array(spoke, { minLength: 4, maxLength: 9 })
  .map((spokes) =>
    loop(
      spokes.map(({ reach, bulge }, index) => {
        const angle = (2 * Math.PI * index) / spokes.length;
        return vertex(reach * Math.cos(angle), reach * Math.sin(angle), bulge);
      }),
    ),
  )
  .filter((shape) => loopFaults(shape).length === 0);

const size = fc.integer({ min: 2000, max: 20_000 }).map((value) => value / 1000);
const place = fc.integer({ min: -12_000, max: 12_000 }).map((value) => value / 1000);

export const anyCircle: fc.Arbitrary<Contour> = fc
  .tuple(place, place, size)
  .map(([x, y, radius]) => circle(point(x, y), radius / 2));

const anyRectangle: fc.Arbitrary<Contour> = fc
  .tuple(place, place, size, size)
  .map(([x, y, width, height]) => rectangle(extent(x, y, x + width, y + height)));

const anyRoundedRectangle: fc.Arbitrary<Contour> = fc
  .tuple(place, place, size, size)
  .map(([x, y, width, height]) =>
    roundedRectangle(extent(x, y, x + width, y + height), Math.min(width, height) / 4),
  );

export const anyContour: fc.Arbitrary<Contour> = fc.oneof(
  anyCircle,
  anyRectangle,
  anyRoundedRectangle,
);
