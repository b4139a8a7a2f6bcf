// Meshes of recipes: the plate's volume, facets that clear, no more triangles than the chord height asks for, clean in
// float32, the same every time, and no memory left behind. Volumes are measured a second time by @jscad/modeling.

import modeling from "@jscad/modeling";
import { beforeAll, describe, expect, test } from "vitest";
import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { rectangle, slotContour } from "../../src/geometry/shapes.ts";
import { capTriangles } from "../../src/geometry/solid/cap-triangles.ts";
import { facets } from "../../src/geometry/solid/facets.ts";
import { isClosed } from "../../src/geometry/solid/is-closed.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { type Mesh, meshExtent, meshVolume, triangleCount } from "../../src/geometry/solid/mesh.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { recipeExtent } from "../../src/geometry/solid/recipe-extent.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import {
  composed,
  layered,
  opening,
  prism,
  type Solid,
  solidLayer,
  solidRegion,
} from "../../src/geometry/solid/solid.ts";
import { chordHeight, clearHeight } from "../../src/geometry/solid/solid-tolerance.ts";
import { stackedTriangles } from "../../src/geometry/solid/stacked-mesh.ts";
import { type GaugedKernel, openGaugedKernel } from "../support/kernel.ts";
import { randomLayeredSolid } from "./random-solids.ts";
import {
  assembledBracket,
  bevelledRing,
  countersunkBlock,
  drilledPlate,
  plainBlock,
} from "./sample-solids.ts";
import { touchingLayers } from "./touching-layers.ts";

let gauged: GaugedKernel;
let kernel: Kernel;
beforeAll(async () => {
  gauged = await openGaugedKernel();
  kernel = gauged.kernel;
});

const samples: readonly (readonly [string, Solid])[] = [
  ["a drilled plate", drilledPlate],
  ["a countersunk block", countersunkBlock],
  ["a bevelled ring", bevelledRing],
  ["a bracket", assembledBracket],
  ["layers", randomLayeredSolid(3)],
];

const jscadVolume = ({ positions, triangles }: Mesh): number => {
  const corner = (index: number): [number, number, number] => {
    const at = 3 * triangles[index]!;
    return [positions[at]!, positions[at + 1]!, positions[at + 2]!];
  };
  const polygons = Array.from({ length: triangles.length / 3 }, (_, index) =>
    modeling.geometries.poly3.create([0, 1, 2].map((side) => corner(3 * index + side))),
  );
  return modeling.measurements.measureVolume(modeling.geometries.geom3.create(polygons));
};

describe("the volume of a mesh", () => {
  test("of the plate is 24629.73 mm³ within a thousandth", () => {
    const volume = meshVolume(meshSolid(drilledPlate, kernel));
    expect(Math.abs(volume / 24629.73 - 1)).toBeLessThan(0.0001);
  });

  test.each(samples)("is the recipe's, and what another library measures: %s", (_name, solid) => {
    const mesh = meshSolid(solid, kernel);
    expect(Math.abs(meshVolume(mesh) / recipeVolume(solid) - 1)).toBeLessThan(0.001);
    expect(jscadVolume(mesh)).toBeCloseTo(meshVolume(mesh), 6);
  });

  test("loses a cone's, a ball's and a cylinder's roundness to less than 0.1 %", () => {
    const disc = prism(0, 4, solidRegion({ outline: circle(point(3, 3), 2.5), holes: [] }));
    expect(Math.abs(meshVolume(meshSolid(disc, kernel)) / recipeVolume(disc) - 1)).toBeLessThan(
      0.0005,
    );
  });
});

test.each(samples)("the box of %s is the recipe's", (_name, solid) => {
  const measured = Object.values(meshExtent(meshSolid(solid, kernel)));
  for (const [index, value] of Object.values(recipeExtent(solid)).entries())
    expect(Math.abs(measured[index]! - value)).toBeLessThan(0.012);
});

/** Least distance from a place to the sides of a polygon. */
const leastDistance = (
  polygon: readonly { readonly x: number; readonly y: number }[],
  x: number,
  y: number,
): number =>
  Math.min(
    ...polygon.map((from, index) => {
      const to = polygon[(index + 1) % polygon.length]!;
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      return Math.abs((to.x - from.x) * (from.y - y) - (from.x - x) * (to.y - from.y)) / length;
    }),
  );

describe("facets", () => {
  test("of a clear 6.4 hole lie round 6.4, their corners at r / cos(pi / n)", () => {
    const [x, y] = [12.3456, 7.891];
    const hole = facets(circle(point(x, y), 3.2), "inside");
    expect(leastDistance(hole, x, y)).toBeGreaterThanOrEqual(3.2);
    const corner = 3.2 / Math.cos(Math.PI / hole.length);
    for (const at of hole) expect(Math.hypot(at.x - x, at.y - y)).toBeGreaterThan(corner - 1e-9);
    expect(Math.max(...hole.map((at) => Math.hypot(at.x - x, at.y - y)))).toBeLessThan(
      corner + 0.0015,
    );
  });

  test("let a 6.4 shank through the mesh of a cut block", () => {
    const block = composed(
      [plainBlock(extent(0, 0, 20, 20), 0, 5)],
      [opening(0, 5, circle(point(10, 10), 3.2))],
    );
    const { positions } = meshSolid(block, kernel);
    const corners = Array.from({ length: positions.length / 3 }, (_, index) => ({
      x: positions[3 * index]!,
      y: positions[3 * index + 1]!,
      z: positions[3 * index + 2]!,
    }));
    const rim = corners
      .filter(({ x, y, z }) => z === 0 && Math.hypot(x - 10, y - 10) < 4)
      .sort((a, b) => Math.atan2(a.y - 10, a.x - 10) - Math.atan2(b.y - 10, b.x - 10));
    expect(rim.length).toBeGreaterThan(20);
    expect(leastDistance(rim, 10, 10)).toBeGreaterThanOrEqual(3.2);
  });

  test("of an exact circle keep its area", () => {
    const polygon = facets(circle(point(1, 2), 3.2), "none");
    let twice = 0;
    for (const [index, from] of polygon.entries()) {
      const to = polygon[(index + 1) % polygon.length]!;
      twice += from.x * to.y - to.x * from.y;
    }
    expect(Math.abs(twice / 2 / (Math.PI * 3.2 * 3.2) - 1)).toBeLessThan(1e-4);
  });

  test("of a clear slot lie beyond its arcs and touch its sides", () => {
    const slot = slotContour(point(0, 0), { length: mm(12), width: mm(4), turn: degrees(0) });
    for (const { x, y } of facets(slot, "inside")) {
      const past = Math.abs(x) > 4 ? Math.hypot(Math.abs(x) - 4, y) : Math.abs(y);
      expect(past).toBeGreaterThan(2 - 0.0008);
      expect(past).toBeLessThan(2 + clearHeight + 0.0008);
    }
  });

  test.each([0.5, 1.6, 3.2, 6.1, 11, 40])("of radius %d are the fewest, up to three", (radius) => {
    const clear = facets(circle(point(0, 0), radius), "inside").length;
    const fewestClear = Math.PI / Math.acos(radius / (radius + clearHeight));
    expect(clear).toBeGreaterThanOrEqual(fewestClear);
    expect(clear).toBeLessThan(fewestClear + 4);
    const exact = facets(circle(point(0, 0), radius), "none").length;
    const fewestExact = Math.PI / Math.acos(1 - chordHeight / radius);
    expect(exact).toBeGreaterThanOrEqual(fewestExact);
    expect(exact).toBeLessThan(fewestExact + 4);
  });
});

test("a single layer has the fewest triangles that its corners allow", () => {
  const corners = 4 + 4 * facets(circle(point(0, 0), 3.3), "inside").length;
  // A polygon with h holes and n corners takes n + 2 h - 2 triangles, twice; each corner's wall takes two.
  expect(triangleCount(meshSolid(drilledPlate, kernel))).toBe(
    2 * (corners + 2 * 4 - 2) + 2 * corners,
  );
});

test("stacked layers have the fewest triangles that their corners allow", () => {
  const outline = rectangle(extent(0, 0, 30, 30));
  const region = (radius: number) =>
    solidRegion({ outline, holes: [circle(point(15, 15), radius)] });
  const solid = layered([solidLayer(0, 2, [region(3)]), solidLayer(2, 5, [region(6)])]);
  const [narrow, wide] = [3, 6].map((r) => facets(circle(point(15, 15), r), "inside").length);
  // Below: outline and narrow hole; above: outline and wide hole; between them the ledge; walls of the outline run through.
  const caps = 4 + narrow! + (4 + wide!) + (narrow! + wide!);
  expect(triangleCount(meshSolid(solid, kernel))).toBe(caps + 2 * (4 + narrow! + wide!));
});

describe("layers that share or cross outlines", () => {
  test.each(touchingLayers)("are one closed mesh: %s", (_what, below, above) => {
    const solid = layered([solidLayer(0, 3, below), solidLayer(3, 5, above)]);
    const mesh = meshSolid(solid, kernel);
    expect(isClosed(mesh)).toBe(true);
    expect(Math.abs(meshVolume(mesh) / recipeVolume(solid) - 1)).toBeLessThan(0.001);
    // The same as pieces that the kernel puts together.
    const pieces = composed(solid.layers.map((layer) => layered([layer])));
    expect(meshVolume(meshSolid(pieces, kernel))).toBeCloseTo(meshVolume(mesh), 2);
    const turned = layered([solidLayer(0, 3, above), solidLayer(3, 5, below)]);
    expect(isClosed(meshSolid(turned, kernel))).toBe(true);
  });
});

/** The kernel's union takes five to ten times as long. */
test.each(touchingLayers)("layers need no union: %s", (_what, below, above) => {
  expect(
    stackedTriangles([solidLayer(0, 3, below), solidLayer(3, 5, above)], "material", kernel),
  ).not.toBeNull();
});

describe("a mesh", () => {
  test.each(samples)("is closed and the same every time: %s", (_name, solid) => {
    const [once, again] = [meshSolid(solid, kernel), meshSolid(solid, kernel)];
    expect(isClosed(once)).toBe(true);
    expect(Buffer.from(once.positions.buffer).equals(Buffer.from(again.positions.buffer))).toBe(
      true,
    );
    expect(once.triangles).toEqual(again.triangles);
  });

  test("with a hole torn into it is not called closed", () => {
    const { positions, triangles } = meshSolid(drilledPlate, kernel);
    expect(isClosed({ positions, triangles: triangles.slice(3) })).toBe(false);
    const turned = triangles.slice();
    turned.set([triangles[1]!, triangles[0]!], 0);
    expect(isClosed({ positions, triangles: turned })).toBe(false);
  });

  test.each<readonly [string, Solid]>([
    [
      "a number that is none",
      composed([prism(0, Number.NaN, solidRegion({ outline: circle(point(0, 0), 2), holes: [] }))]),
    ],
    [
      "a place that is none",
      composed([
        drilledPlate,
        prism(0, 1, solidRegion({ outline: rectangle(extent(0, 0, Number.NaN, 5)), holes: [] })),
      ]),
    ],
    [
      "nothing left",
      composed([plainBlock(extent(0, 0, 5, 5), 0, 5)], [plainBlock(extent(0, 0, 5, 5), 0, 5)]),
    ],
  ])("is not made of %s", (_what, solid) => {
    expect(() => meshSolid(solid, kernel)).toThrow(/must hold/);
  });
});

test("200 rebuilds leave no memory behind", () => {
  const solids = [randomLayeredSolid(7), countersunkBlock, assembledBracket];
  for (let build = 0; build < 20; build += 1) meshSolid(solids[build % 3]!, kernel);
  const before = gauged.memorySize();
  for (let build = 0; build < 200; build += 1) meshSolid(solids[build % 3]!, kernel);
  expect(gauged.memorySize()).toBe(before);
});

test("caps of many corners leave no memory behind, and are the kernel's own triangles", () => {
  const ring = Array.from({ length: 3000 }, (_, corner): [number, number] => {
    const angle = (corner * 2 * Math.PI) / 3000;
    return [50 * Math.cos(angle), 50 * Math.sin(angle)];
  });
  expect(capTriangles([ring], kernel)).toEqual(kernel.triangulate([ring]));
  const before = gauged.memorySize();
  for (let build = 0; build < 300; build += 1) capTriangles([ring], kernel);
  expect(gauged.memorySize()).toBe(before);
});

test("the gauge sees what is not given back", () => {
  const before = gauged.memorySize();
  const left = [];
  for (let ball = 0; ball < 200 && gauged.memorySize() === before; ball += 1) {
    const solid = kernel.Manifold.sphere(10, 100);
    solid.status();
    left.push(solid);
  }
  const after = gauged.memorySize();
  for (const solid of left) solid.delete();
  expect(after).toBeGreaterThan(before);
});
