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
  lofted,
  placed,
  prism,
  revolved,
  type Solid,
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
