// Recipes without a mesh: volumes against the closed forms of geometry handbooks, boxes, and what is refused.

import { describe, expect, test } from "vitest";
import { circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { rectangle, roundedRectangle } from "../../src/geometry/shapes.ts";
import { recipeExtent } from "../../src/geometry/solid/recipe-extent.ts";
import { recipeFaults } from "../../src/geometry/solid/recipe-faults.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import {
  composed,
  isLayeredPrism,
  layered,
  lofted,
  opening,
  placed,
  prism,
  revolved,
  type Solid,
  solidLayer,
  solidRegion,
} from "../../src/geometry/solid/solid.ts";
import { drilledPlate, plainBlock } from "./sample-solids.ts";

const block = (width: number, depth: number, height: number): Solid =>
  plainBlock(extent(0, 0, width, depth), 0, height);

describe("the volume of a recipe", () => {
  test("is area times thickness, less the holes", () => {
    // 146.05 x 57.15 x 3 less four bores of 6.6: 25040.2725 - 4 x pi x 3.3² x 3, worked by hand.
    expect(recipeVolume(drilledPlate)).toBeCloseTo(24629.73, 2);
    expect(recipeVolume(drilledPlate)).toBeCloseTo(
      146.05 * 57.15 * 3 - 12 * Math.PI * 3.3 * 3.3,
      9,
    );
  });

  test("of a turned profile is that of Pappus: frustum, ring and ball", () => {
    const frustum = revolved(
      point(5, 7),
      loop([vertex(0, 0), vertex(4, 0), vertex(2, 6), vertex(0, 6)]),
    );
    expect(recipeVolume(frustum)).toBeCloseTo(((Math.PI * 6) / 3) * (16 + 8 + 4), 9);
    const ring = revolved(point(0, 0), loop([vertex(7, 0, 1), vertex(13, 0, 1)]));
    expect(recipeVolume(ring)).toBeCloseTo(2 * Math.PI * Math.PI * 10 * 9, 9);
    const ball = revolved(point(0, 0), loop([vertex(0, -3, 1), vertex(0, 3)]));
    expect(recipeVolume(ball)).toBeCloseTo((4 / 3) * Math.PI * 27, 9);
  });

  test("of a loft is the prismatoid's: a pyramid's stump, a cone's stump, a bevelled ring", () => {
    const stump = lofted([
      { height: mm(1), outline: rectangle(extent(0, 0, 10, 10)), holes: [] },
      { height: mm(7), outline: rectangle(extent(3, 3, 7, 7)), holes: [] },
    ]);
    expect(recipeVolume(stump)).toBeCloseTo((6 / 3) * (100 + 40 + 16), 9);
    const cone = lofted([
      { height: mm(0), outline: circle(point(0, 0), 4), holes: [circle(point(0, 0), 1)] },
      { height: mm(6), outline: circle(point(0, 0), 2), holes: [circle(point(0, 0), 1)] },
    ]);
    expect(recipeVolume(cone)).toBeCloseTo(((Math.PI * 6) / 3) * 28 - Math.PI * 6, 9);
  });

  test("of pieces is what is added less what is cut", () => {
    const solid = composed(
      [block(10, 10, 5), placed(block(4, 4, 2), { x: 3, y: 3, z: 5 })],
      [opening(0, 5, circle(point(5, 5), 1))],
    );
    expect(recipeVolume(solid)).toBeCloseTo(500 + 32 - 5 * Math.PI, 9);
  });
});

describe("the box of a recipe", () => {
  const box = (solid: Solid): readonly number[] => {
    const { minX, minY, minZ, maxX, maxY, maxZ } = recipeExtent(solid);
    return [minX, minY, minZ, maxX, maxY, maxZ];
  };
  const expectBox = (solid: Solid, expected: readonly number[]): void => {
    for (const [index, value] of box(solid).entries())
      expect(value).toBeCloseTo(expected[index]!, 9);
  };

  test("reaches round arcs and over all layers", () => {
    const disc = prism(-1, 2, solidRegion({ outline: circle(point(5, 6), 3), holes: [] }));
    expectBox(disc, [2, 3, -1, 8, 9, 2]);
    const bow = loop([vertex(0, 0), vertex(10, 0, 1), vertex(10, 8), vertex(0, 8)]);
    expectBox(prism(0, 1, solidRegion({ outline: bow, holes: [] })), [0, 0, 0, 14, 8, 1]);
  });

  test("turns with what is placed", () => {
    const lying = placed(block(10, 4, 2), { x: 1, y: 2, z: 3 }, { x: 90 });
    expectBox(lying, [1, 0, 3, 11, 2, 7]);
    const turned = placed(block(10, 4, 2), { x: 0, y: 0, z: 0 }, { z: 30 });
    const [sine, cosine] = [0.5, Math.sqrt(3) / 2];
    expectBox(turned, [-4 * sine, 0, 0, 10 * cosine, 10 * sine + 4 * cosine, 2]);
    const disc = prism(0, 2, solidRegion({ outline: circle(point(0, 0), 5), holes: [] }));
    const tilted = placed(disc, { x: 0, y: 0, z: 0 }, { y: 30 });
    expectBox(tilted, [
      -5 * cosine,
      -5,
      -5 * sine,
      5 * cosine + 2 * sine,
      5,
      5 * sine + 2 * cosine,
    ]);
  });

  test("of a turned profile is as wide as its widest place", () => {
    const ring = revolved(point(1, 2), loop([vertex(7, 0, 1), vertex(13, 0, 1)]));
    expectBox(ring, [-12, -11, -3, 14, 15, 3]);
  });
});

describe("the faults of a recipe", () => {
  const plain = solidRegion({ outline: rectangle(extent(0, 0, 10, 10)), holes: [] });
  const shifted = (x: number, size = 10) =>
    solidRegion({ outline: rectangle(extent(x, 3, x + size, 3 + size)), holes: [] });
  const crossed = loop([vertex(0, 0), vertex(10, 10), vertex(10, 0), vertex(0, 10)]);
  const section = (height: number, corner: number) => ({
    height: mm(height),
    outline: roundedRectangle(extent(0, 0, 10, 10), corner),
    holes: [],
  });

  test("are none for a sound one", () => {
    expect(recipeFaults(drilledPlate)).toEqual([]);
    expect(recipeFaults(lofted([section(0, 2), section(4, 1)]))).toEqual([]);
  });

  test.each<readonly [string, Solid]>([
    ["no layer", layered([])],
    ["a layer without thickness", prism(2, 2, plain)],
    ["a gap", layered([solidLayer(0, 1, [plain]), solidLayer(1.001, 2, [plain])])],
    ["a layer without material", layered([solidLayer(0, 1, [])])],
    ["an outline that crosses itself", prism(0, 1, solidRegion({ outline: crossed, holes: [] }))],
    [
      "a hole across the outline",
      prism(
        0,
        1,
        solidRegion({
          outline: rectangle(extent(0, 0, 10, 10)),
          holes: [circle(point(9, 5), 2)],
        }),
      ),
    ],
    ["regions that touch", layered([solidLayer(0, 1, [plain, shifted(10)])])],
    ["a region within another", layered([solidLayer(0, 1, [plain, shifted(3, 2)])])],
    [
      // An arc of 3 mm over a chord of 0.26: 0.003 high, less than facets stray, so that one facet is the chord itself.
      "a sliver that facets make a line of",
      prism(
        0,
        1,
        solidRegion({ outline: loop([vertex(0, 0, 0.0216), vertex(0, 0.26)]), holes: [] }),
      ),
    ],
    ["a number that is none", prism(0, Number.NaN, plain)],
    [
      "a place that is none",
      prism(0, 1, solidRegion({ outline: circle(point(Number.NaN, 0), 2), holes: [] })),
    ],
    [
      "a profile across its axis",
      revolved(point(0, 0), loop([vertex(-1, 0), vertex(2, 0), vertex(2, 2)])),
    ],
    ["one section", lofted([section(0, 2)])],
    [
      "sections that don't match",
      lofted([section(0, 2), { ...section(4, 2), outline: rectangle(extent(0, 0, 9, 9)) }]),
    ],
    ["sections upside down", lofted([section(4, 2), section(0, 2)])],
    ["nothing added", composed([], [block(1, 1, 1)])],
    ["a fault deep inside", placed(composed([prism(2, 2, plain)]), { x: 0, y: 0, z: 0 })],
  ])("name %s", (_what, solid) => {
    expect(recipeFaults(solid)).toHaveLength(1);
  });

  test("only layered solids are layered prisms", () => {
    expect(isLayeredPrism(drilledPlate)).toBe(true);
    expect(isLayeredPrism(placed(drilledPlate, { x: 0, y: 0, z: 0 }))).toBe(false);
  });
});
