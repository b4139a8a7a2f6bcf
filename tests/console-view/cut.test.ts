// What a plane cuts of a body, against closed forms and against the solid kernel's own slices, which share no code with it.

import { describe, expect, test } from "vitest";
import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { meshVolume } from "../../src/geometry/solid/mesh.ts";
import { composed, prism, type Solid, solidRegion } from "../../src/geometry/solid/solid.ts";
import { WORLD } from "../../src/geometry/space/frame.ts";
import { type Caps, type CutPlane, cutCaps } from "../../viewer/console/cut-caps.ts";
import { addSolid, type GrowingLot } from "../../viewer/console/low-mesh.ts";
import { openKernel } from "../support/kernel.ts";

const lotOf = (solid: Solid): GrowingLot => {
  const lot: GrowingLot = { positions: [], triangles: [], edges: [] };
  addSolid(lot, solid, WORLD);
  return lot;
};

const cutOf = ({ positions, triangles }: GrowingLot, plane: CutPlane): Caps =>
  cutCaps({ positions, triangles, from: 0, count: triangles.length / 3 }, plane);

/** Of triangles in space: half the length of the cross product of two sides. */
const areaOf = ({ positions }: Caps): number => {
  let area = 0;
  for (let at = 0; at < positions.length; at += 9) {
    const side = (to: number, axis: number): number =>
      positions[at + to + axis]! - positions[at + axis]!;
    const [ux, uy, uz] = [side(3, 0), side(3, 1), side(3, 2)];
    const [vx, vy, vz] = [side(6, 0), side(6, 1), side(6, 2)];
    area += Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2;
  }
  return area;
};

const box = prism(0, 30, solidRegion({ outline: rectangle(extent(0, 0, 40, 20)), holes: [] }));
const plate = prism(
  0,
  3,
  solidRegion({
    outline: rectangle(extent(0, 0, 40, 20)),
    holes: [circle(point(10, 10), 4), circle(point(30, 10), 6)],
  }),
);

describe("a box of 40 by 20 by 30", () => {
  test.each<[string, CutPlane, number]>([
    ["level", { normal: [0, 0, 1], offset: 12 }, 800],
    ["along", { normal: [1, 0, 0], offset: 3 }, 600],
    // Through two edges at 45 degrees: the diagonal of a square of 20, times 30.
    [
      "aslant",
      { normal: [Math.SQRT1_2, Math.SQRT1_2, 0], offset: 20 * Math.SQRT1_2 },
      30 * 20 * Math.SQRT2,
    ],
  ])("is cut %s in the area of its section", (_way, plane, area) => {
    expect(areaOf(cutOf(lotOf(box), plane))).toBeCloseTo(area, 6);
  });

  test("is not cut by a plane beside it", () =>
    expect(cutOf(lotOf(box), { normal: [0, 0, 1], offset: 31 })).toEqual({
      positions: [],
      edges: [],
    }));

  test("is cut in its plane, on the side that is kept", () => {
    const { positions } = cutOf(lotOf(box), { normal: [0, 0, 1], offset: 12 });
    expect(positions.filter((_, index) => index % 3 === 2).every((z) => z === 12)).toBe(true);
  });
});

test("a hole stays open where it is cut, and where the cut misses it it does not show", () => {
  const across = (offset: number): number =>
    areaOf(cutOf(lotOf(plate), { normal: [1, 0, 0], offset }));
  expect(across(20)).toBeCloseTo(60, 6);
  // Chords stray from a hole's wall by up to 0.18 mm at either side, into the hole.
  const open = across(30) - (20 - 12) * 3;
  expect(open).toBeGreaterThanOrEqual(0);
  expect(open).toBeLessThan(2 * 0.18 * 3);
});

test("sections of a plate with holes are those of the solid kernel", async () => {
  const { Manifold, Mesh } = await openKernel();
  const lot = lotOf(plate);
  const mesh = new Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(lot.positions),
    triVerts: Uint32Array.from(lot.triangles),
  });
  const solid = new Manifold(mesh);
  expect(solid.status()).toBe("NoError");
  const slice = solid.slice(1.5);
  expect(areaOf(cutOf(lot, { normal: [0, 0, 1], offset: 1.5 }))).toBeCloseTo(slice.area(), 3);
  slice.delete();
  solid.delete();
});

test("shapes for the eye close, face outward, and hold about what the recipe does", () => {
  const { positions, triangles } = lotOf(composed([plate, box]));
  const sides = new Map<string, number>();
  for (let at = 0; at < triangles.length; at += 3)
    for (let side = 0; side < 3; side += 1) {
      const [from, to] = [triangles[at + side]!, triangles[at + ((side + 1) % 3)]!];
      const [key, way] = from < to ? [`${from} ${to}`, 1] : [`${to} ${from}`, -1];
      sides.set(key, (sides.get(key) ?? 0) + way);
    }
  expect([...sides.values()].every((sum) => sum === 0)).toBe(true);
  const volume = meshVolume({
    positions: Float32Array.from(positions),
    triangles: Uint32Array.from(triangles),
  });
  const exact = 40 * 20 * 30 + (40 * 20 - Math.PI * (16 + 36)) * 3;
  expect(Math.abs(volume / exact - 1)).toBeLessThan(0.002);
});
