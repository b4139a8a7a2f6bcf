// Print files of 40 random solids and of the samples, read by what shares no code with the product: a second STL reader,
// admesh, a strict 3MF reader. Then each of these readers is shown a damaged file.

import { beforeAll, describe, expect, test } from "vitest";
import { stlFile } from "../../src/export/stl.ts";
import { threeMfFile } from "../../src/export/three-mf.ts";
import { extent } from "../../src/geometry/extent.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { type Mesh, triangleCount } from "../../src/geometry/solid/mesh.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { recipeFaults } from "../../src/geometry/solid/recipe-faults.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import { admeshFaults } from "../support/admesh.ts";
import { openKernel } from "../support/kernel.ts";
import { readStlStrictly } from "../support/stl-reader.ts";
import { readThreeMfStrictly } from "../support/three-mf-reader.ts";
import { randomComposedSolid, randomLayeredSolid } from "./random-solids.ts";
import {
  assembledBracket,
  bevelledRing,
  countersunkBlock,
  drilledPlate,
  plainBlock,
} from "./sample-solids.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

const bodyOf = (mesh: Mesh, name = "spacer") => ({
  name,
  material: "black PETG",
  colour: "#101010",
  mesh,
});

function expectSound(solid: Solid): void {
  expect(recipeFaults(solid)).toEqual([]);
  const mesh = meshSolid(solid, kernel);
  const stl = stlFile(mesh);
  const read = readStlStrictly(stl);
  expect(read.faults).toEqual([]);
  expect(read.shells).toBe(1);
  expect(read.triangles).toBe(triangleCount(mesh));
  expect(Math.abs(read.volume / recipeVolume(solid) - 1)).toBeLessThan(0.001);
  expect(admeshFaults(stl, 1)).toEqual([]);
  const packed = readThreeMfStrictly(threeMfFile({ title: "part", bodies: [bodyOf(mesh)] }));
  expect(Math.abs(packed.objects[0]!.volume / recipeVolume(solid) - 1)).toBeLessThan(0.001);
}

describe("random solids are sound in STL and 3MF", () => {
  const seeds = Array.from({ length: 40 }, (_, index) => 1 + index);
  test.each(seeds)("seed %d", (seed) => expectSound(randomLayeredSolid(seed)));
});

describe("random solids of turned, lofted and placed pieces are sound in STL and 3MF", () => {
  const seeds = Array.from({ length: 12 }, (_, index) => 1 + index);
  test.each(seeds)("seed %d", (seed) => expectSound(randomComposedSolid(seed)));
});

test.each<readonly [string, Solid]>([
  ["a drilled plate", drilledPlate],
  ["a countersunk block", countersunkBlock],
  ["a bevelled ring", bevelledRing],
  ["a bracket", assembledBracket],
])("%s is sound in STL and 3MF", (_name, solid) => expectSound(solid));

describe("a 3MF", () => {
  test("holds several bodies by name and material as one part", () => {
    const black = meshSolid(plainBlock(extent(0, 0, 10, 10), 0, 2), kernel);
    const white = meshSolid(plainBlock(extent(0, 0, 10, 10), 2, 3), kernel);
    const title = 'winch <spacer> & "rim" Ø 12';
    const read = readThreeMfStrictly(
      threeMfFile({
        title,
        bodies: [
          bodyOf(black),
          { name: "white", material: "white PETG", colour: "#F0F0F0", mesh: white },
          bodyOf(black, "second"),
        ],
      }),
    );
    expect(read.title).toBe(title);
    expect(read.objects.map(({ name }) => name)).toEqual(["spacer", "white", "second", title]);
    expect(read.objects.map(({ material }) => material?.name)).toEqual([
      "black PETG",
      "white PETG",
      "black PETG",
      undefined,
    ]);
    expect(read.items).toEqual([read.objects[3]!.id]);
    expect(read.objects[3]!.components).toEqual(read.objects.slice(0, 3).map(({ id }) => id));
    expect(read.objects[1]!.volume).toBeCloseTo(100, 9);
  });

  test("carries one fixed date, whatever the clock and the zone", () => {
    const mesh = meshSolid(drilledPlate, kernel);
    const before = process.env["TZ"];
    const fileIn = (zone: string): Uint8Array => {
      process.env["TZ"] = zone;
      return threeMfFile({ title: "a", bodies: [bodyOf(mesh)] });
    };
    const offsetOf = (): number => new Date(2000, 0, 1).getTimezoneOffset();
    try {
      const east = fileIn("Pacific/Auckland");
      const eastOffset = offsetOf();
      const west = fileIn("America/St_Johns");
      expect(offsetOf()).not.toBe(eastOffset);
      expect(Buffer.from(east).equals(west)).toBe(true);
      // 1 January 2000, 12:00:00, as DOS counts: years since 1980, months, days; hours (APPNOTE 6.3, 4.4.6).
      const stamp = ((20 << 9) | (1 << 5) | 1) * 65536 + (12 << 11);
      expect(readThreeMfStrictly(east).stamps).toEqual([stamp, stamp, stamp]);
    } finally {
      if (before === undefined) delete process.env["TZ"];
      else process.env["TZ"] = before;
    }
  });
});

test("the same solid gives the same bytes", () => {
  const files = (): readonly Uint8Array[] => {
    const mesh = meshSolid(assembledBracket, kernel);
    return [stlFile(mesh), threeMfFile({ title: "bracket", bodies: [bodyOf(mesh)] })];
  };
  const [stl, packed] = files();
  const [stlAgain, packedAgain] = files();
  expect(Buffer.from(stl!).equals(stlAgain!)).toBe(true);
  expect(Buffer.from(packed!).equals(packedAgain!)).toBe(true);
});

describe("the readers object", () => {
  const triangles = (file: Uint8Array): DataView =>
    new DataView(file.buffer, file.byteOffset + 84, file.byteLength - 84);
  const sound = (): Uint8Array => stlFile(meshSolid(drilledPlate, kernel)).slice();

  /** Exchanges the second and third corner of one triangle. */
  const turnedOver = (): Uint8Array => {
    const file = sound();
    const corners = file.slice(84 + 24, 84 + 48);
    file.set(corners.subarray(12, 24), 84 + 24);
    file.set(corners.subarray(0, 12), 84 + 36);
    return file;
  };
  const oneLess = (): Uint8Array => {
    const file = sound().slice(0, -50);
    const view = new DataView(file.buffer);
    view.setUint32(80, view.getUint32(80, true) - 1, true);
    return file;
  };
  const flattened = (): Uint8Array => {
    const file = sound();
    file.set(file.slice(84 + 12, 84 + 24), 84 + 24);
    return file;
  };
  const numberless = (): Uint8Array => {
    const file = sound();
    triangles(file).setFloat32(12, Number.NaN, true);
    return file;
  };

  test.each([
    ["to a triangle turned over", turnedOver],
    ["to a triangle left out", oneLess],
    ["to a flat triangle", flattened],
    ["to a number that is none", numberless],
  ])("%s", (_what, damaged) => {
    expect(readStlStrictly(damaged()).faults).not.toEqual([]);
    expect(admeshFaults(damaged(), 1)).not.toEqual([]);
  });

  test("to a file that is cut off", () =>
    expect(() => readStlStrictly(sound().slice(0, -7))).toThrow());

  const packed = (mesh: Mesh): Uint8Array => threeMfFile({ title: "a", bodies: [bodyOf(mesh)] });
  const plate = (): { positions: Float32Array; triangles: Uint32Array } => {
    const { positions, triangles: corners } = meshSolid(drilledPlate, kernel);
    return { positions: positions.slice(), triangles: corners.slice() };
  };

  test("to a mesh in 3MF with a triangle turned over, left out, flat or inside out", () => {
    const turned = plate();
    turned.triangles.set([turned.triangles[1]!, turned.triangles[0]!], 0);
    expect(() => readThreeMfStrictly(packed(turned))).toThrow(/3mf/);
    const less = plate();
    expect(() =>
      readThreeMfStrictly(packed({ ...less, triangles: less.triangles.slice(3) })),
    ).toThrow(/3mf/);
    const flat = plate();
    flat.triangles[1] = flat.triangles[0]!;
    expect(() => readThreeMfStrictly(packed(flat))).toThrow(/3mf/);
    const inside = plate();
    expect(() =>
      readThreeMfStrictly(packed({ ...inside, triangles: inside.triangles.toReversed() })),
    ).toThrow(/outward/);
  });

  test("to a byte of the package that is changed", () => {
    const file = packed(meshSolid(plainBlock(extent(0, 0, 1, 1), 0, 1), kernel));
    const directory = Buffer.from(file).readUInt32LE(file.length - 6);
    for (let at = 60; at < directory; at += 97) {
      const damaged = file.slice();
      damaged[at] = damaged[at]! ^ 0x55;
      expect(() => readThreeMfStrictly(damaged), `byte ${at}`).toThrow();
    }
  });
});
