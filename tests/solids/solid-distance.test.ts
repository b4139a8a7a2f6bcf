// How far a point lies from a recipe, against closed forms and against the mesh that the kernel makes of the same recipe.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { meshDistance } from "../../src/geometry/solid/mesh-distance.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import {
  composed,
  layered,
  lofted,
  placed,
  prism,
  revolved,
  type Solid,
  solidLayer,
  solidRegion,
} from "../../src/geometry/solid/solid.ts";
import { solidDistance } from "../../src/geometry/solid/solid-distance.ts";
import { type Vector, vector } from "../../src/geometry/space/vector.ts";
import { openKernel } from "../support/kernel.ts";

const kernel = await openKernel();
const seed = 20_261_127;

const plate = prism(
  0,
  4,
  solidRegion({
    outline: rectangle(extent(0, 0, 40, 30)),
    holes: [circle(point(20, 15), 5)],
  }),
);
/** Radius 10 at the foot, 6 at the head, 12 high. */
const cone = lofted([
  { height: mm(0), outline: circle(point(0, 0), 10), holes: [] },
  { height: mm(12), outline: circle(point(0, 0), 6), holes: [] },
]);
const cylinder = revolved(
  point(0, 0),
  loop([vertex(0, 0), vertex(8, 0), vertex(8, 10), vertex(0, 10)]),
);

describe.each([
  // Beside an edge: both count. Pythagoras with 3, 4 and 12.
  { what: "past a corner of a plate", solid: plate, at: vector(-3, -4, 16), is: 13 },
  { what: "in the air of its hole", solid: plate, at: vector(20, 15, 2), is: 5 },
  { what: "above its hole", solid: plate, at: vector(20, 15, 16), is: 13 },
  { what: "inside, 1 mm under its top", solid: plate, at: vector(5, 5, 3), is: -1 },
  { what: "beside a turned piece", solid: cylinder, at: vector(0, 11, 5), is: 3 },
  { what: "on its axis: the ends are its walls", solid: cylinder, at: vector(0, 0, 4), is: -4 },
  { what: "past its rim", solid: cylinder, at: vector(11, 0, 14), is: 5 },
  // The flank leans by 4 in 12: sin = 12 / sqrt(160).
  {
    what: "beside a cone at half its height",
    solid: cone,
    at: vector(9, 0, 6),
    is: 12 / Math.sqrt(160),
  },
  {
    what: "turned and moved",
    solid: placed(cylinder, { x: 5, y: 0, z: 0 }, { y: 90 }),
    at: vector(10, 0, 11),
    is: 3,
  },
  {
    what: "in a pocket: as far as its nearest wall",
    solid: composed(
      [prism(0, 10, solidRegion({ outline: rectangle(extent(0, 0, 40, 30)), holes: [] }))],
      [prism(4, 10, solidRegion({ outline: rectangle(extent(10, 10, 30, 20)), holes: [] }))],
    ),
    at: vector(20, 15, 7),
    is: 3,
  },
])("$what", ({ solid, at, is }) => {
  test(`is ${is.toFixed(3)} mm`, () => {
    expect(solidDistance(solid, at)).toBeCloseTo(is, 9);
  });
});

// Where two layers or pieces touch there is no wall: the distance is the whole body's.
describe("at the seam of", () => {
  const square = (size: number) =>
    solidRegion({ outline: rectangle(extent(-size, -size, size, size)), holes: [] });
  const disc = (radius: number) => solidRegion({ outline: circle(point(0, 0), radius), holes: [] });
  const slabs = layered([4, 8, 12].map((to) => solidLayer(to - 4, to, [square(20)])));
  const post = layered([solidLayer(0, 4, [square(20)]), solidLayer(4, 14, [disc(5)])]);
  const box = (fromX: number, toX: number) =>
    prism(0, 10, solidRegion({ outline: rectangle(extent(fromX, 0, toX, 10)), holes: [] }));
  test.each([
    // Three slabs of 4 are a block of 40 x 40 x 12.
    { what: "three slabs, in the middle", solid: slabs, at: vector(0, 0, 6), is: -6 },
    { what: "three slabs, on a seam", solid: slabs, at: vector(1, 2, 4), is: -4 },
    { what: "three slabs, just under a seam", solid: slabs, at: vector(0, 0, 7.9), is: -4.1 },
    { what: "three slabs, beside a wall", solid: slabs, at: vector(18, 0, 8), is: -2 },
    // A post of 10 on a plate of 4: on the axis at the seam the foot is 4 away, the ring of the plate's top 5.
    { what: "a post on a plate, on its axis", solid: post, at: vector(0, 0, 4), is: -4 },
    { what: "a post on a plate, by the ring", solid: post, at: vector(3, 0, 4), is: -2 },
    // 1 below the plate's top, 3 from the axis: the ring begins 2 aside and 1 up.
    {
      what: "a post on a plate, under its rim",
      solid: post,
      at: vector(3, 0, 3),
      is: -Math.sqrt(5),
    },
    { what: "a post on a plate, on the ring", solid: post, at: vector(6, 0, 4), is: 0 },
    { what: "a post on a plate, in the air", solid: post, at: vector(8, 0, 8), is: 3 },
    {
      what: "two boxes side by side",
      solid: composed([box(0, 10), box(10, 30)]),
      at: vector(10, 5, 6),
      is: -4,
    },
    {
      what: "two boxes side by side, a hair beside it",
      solid: composed([box(0, 10), box(10, 30)]),
      at: vector(9.9, 5, 6),
      is: -4,
    },
    {
      what: "a box and a disc that is put on it",
      solid: composed([
        prism(0, 4, square(20)),
        placed(prism(0, 10, disc(5)), { x: 0, y: 0, z: 4 }),
      ]),
      at: vector(0, 0, 4),
      is: -4,
    },
    // A pocket of 20 x 10, 6 deep, open at the top: above its middle the nearest edge is 5 aside and 1 down.
    {
      what: "the mouth of a pocket",
      solid: composed(
        [prism(0, 10, solidRegion({ outline: rectangle(extent(0, 0, 40, 30)), holes: [] }))],
        [prism(4, 10, solidRegion({ outline: rectangle(extent(10, 10, 30, 20)), holes: [] }))],
      ),
      at: vector(20, 15, 11),
      is: Math.sqrt(26),
    },
    // A straight loft in two stretches is one cylinder of radius 8 and height 12.
    {
      what: "two stretches of a loft",
      solid: lofted(
        [0, 6, 12].map((height) => ({
          height: mm(height),
          outline: circle(point(0, 0), 8),
          holes: [],
        })),
      ),
      at: vector(0, 0, 6),
      is: -6,
    },
  ])("$what it is $is mm", ({ solid, at, is }) => {
    expect(solidDistance(solid, at)).toBeCloseTo(is, 6);
  });
});

const anyPoint = fc
  .tuple(
    fc.integer({ min: -30, max: 60 }),
    fc.integer({ min: -30, max: 60 }),
    fc.integer({ min: -20, max: 30 }),
  )
  .map(([x, y, z]): Vector => vector(x + 0.37, y + 0.21, z + 0.13));

describe.each([
  { what: "a plate with a hole", solid: plate },
  { what: "a cone", solid: cone },
  { what: "a turned piece", solid: cylinder },
  {
    what: "a stepped stack with a hole through it",
    solid: layered(
      [12, 9, 4].map((size, index) =>
        solidLayer(5 * index, 5 * index + 5, [
          solidRegion({
            outline: rectangle(extent(-size, -size, size, size)),
            holes: [circle(point(0, 0), 3)],
          }),
        ]),
      ),
    ),
  },
  {
    what: "a turned piece on a plate, with a hole through both",
    solid: composed(
      [plate, placed(cylinder, { x: 30, y: 8, z: 4 })],
      [prism(0, 14, solidRegion({ outline: circle(point(30, 8), 2), holes: [] }))],
    ),
  },
] satisfies readonly { readonly what: string; readonly solid: Solid }[])(
  `$what (seed ${seed})`,
  ({ solid }) => {
    const mesh = meshSolid(solid, kernel);
    // Facets stray from curves by the chord height, 0.01 mm or so.
    test("is never told further away than its mesh is, and never on it where the mesh is far", () => {
      fc.assert(
        fc.property(anyPoint, (at) => {
          const [told, real] = [Math.abs(solidDistance(solid, at)), meshDistance(mesh, at)];
          expect(told).toBeLessThanOrEqual(real + 0.05);
          if (real > 0.2) expect(told).toBeGreaterThan(real / 3);
        }),
        { seed, numRuns: 200 },
      );
    });
  },
);
