// STEP files of layered solids, read back by OpenCASCADE (of which nothing is shipped): one valid solid, its volume the
// recipe's to a millionth, its arcs true cylinders. Then the reader is shown damaged files.

import type { OpenCascadeInstance } from "replicad-opencascadejs";
import { beforeAll, describe, expect, test } from "vitest";
import { stepFile } from "../../src/export/step.ts";
import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import {
  type LayeredSolid,
  layered,
  solidLayer,
  solidRegion,
} from "../../src/geometry/solid/solid.ts";
import { openStepReader, readStep } from "../support/step-reader.ts";
import { stepTextOf } from "../support/step-text.ts";
import { randomLayeredSolid } from "./random-solids.ts";
import { drilledPlate, plainBlock } from "./sample-solids.ts";
import { box, disc, touchingLayers } from "./touching-layers.ts";

let kernel: OpenCascadeInstance;
beforeAll(async () => {
  kernel = await openStepReader();
});

function expectExact(solid: LayeredSolid): void {
  const read = readStep(stepTextOf(solid), kernel);
  expect(read.solids).toBe(1);
  expect(read.isValid).toBe(true);
  expect(read.looseness).toBeLessThan(1e-5);
  expect(Math.abs(read.volume / recipeVolume(solid) - 1)).toBeLessThan(1e-6);
}

test("the plate reads back as 24629.73 mm³ with eight half cylinders", () => {
  const read = readStep(stepTextOf(drilledPlate), kernel);
  expect(read.volume).toBeCloseTo(24629.73, 2);
  expect(read.cylinders).toBe(8);
  expect(read.faces).toBe(2 + 4 + 8);
});

describe("random layered solids read back valid and exact", () => {
  const seeds = Array.from({ length: 8 }, (_, index) => 1 + index);
  test.each(seeds)("seed %d", (seed) => expectExact(randomLayeredSolid(seed)));
});

describe("layers that share or cross outlines read back valid and exact", () => {
  test.each(touchingLayers)("%s", (_what, below, above) => {
    expectExact(layered([solidLayer(0, 3, below), solidLayer(3, 5, above)]));
  });
});

describe("what has no STEP file is refused with its reason", () => {
  test.each<readonly [RegExp, LayeredSolid]>([
    [
      /along an edge/,
      layered([solidLayer(0, 3, [box(0, 0, 40, 10)]), solidLayer(3, 5, [box(0, 10, 40, 20)])]),
    ],
    [
      /overlap/,
      layered([
        solidLayer(0, 1, [box(0, 0, 40, 30)]),
        solidLayer(1, 2, [disc(10, 10, 5), disc(17, 10, 5)]),
      ]),
    ],
    [/more than one piece/, layered([solidLayer(0, 3, [box(0, 0, 10, 10), box(20, 0, 30, 10)])])],
    [
      /hollow/,
      layered([
        solidLayer(0, 1, [box(0, 0, 10, 10)]),
        solidLayer(1, 2, [
          solidRegion({
            outline: rectangle(extent(0, 0, 10, 10)),
            holes: [circle(point(5, 5), 2)],
          }),
        ]),
        solidLayer(2, 3, [box(0, 0, 10, 10)]),
      ]),
    ],
  ])("%s", (why, solid) => {
    const file = stepFile(solid, "part");
    expect(file.kind === "refused" && file.why).toMatch(why);
  });
});

test("the same solid gives the same text, whatever it is called", () => {
  expect(stepTextOf(randomLayeredSolid(5))).toBe(stepTextOf(randomLayeredSolid(5)));
  const named = stepFile(drilledPlate, "winch's Ø 12 \\ spacer");
  expect(named.kind === "written" && readStep(named.text, kernel).isValid).toBe(true);
  expect(named.kind === "written" && named.text).toContain(
    "'winch''s \\X2\\00D8\\X0\\ 12 \\\\ spacer'",
  );
});

describe("the reader objects", () => {
  const block = plainBlock(extent(0, 0, 40, 30), 0, 3);
  const isSound = (text: string, volume: number): boolean => {
    const read = readStep(text, kernel);
    return read.isValid && read.looseness < 1e-5 && Math.abs(read.volume / volume - 1) < 1e-6;
  };

  test("to nothing in a sound file", () => expect(isSound(stepTextOf(block), 3600)).toBe(true));

  test("to a corner that is moved", () => {
    const text = stepTextOf(block);
    const moved = text.replace(
      "CARTESIAN_POINT('',(40.,30.,3.))",
      "CARTESIAN_POINT('',(41.,30.,3.))",
    );
    expect(moved).not.toBe(text);
    expect(isSound(moved, 3600)).toBe(false);
  });

  test("to a face that is left out", () => {
    const text = stepTextOf(block);
    const less = text.replace(/CLOSED_SHELL\('',\(#\d+,/, "CLOSED_SHELL('',(");
    expect(less).not.toBe(text);
    expect(isSound(less, 3600)).toBe(false);
  });

  test("to a radius that is changed", () => {
    const text = stepTextOf(drilledPlate);
    const wide = text.replaceAll(/,3\.3\)/g, ",3.4)");
    expect(wide).not.toBe(text);
    expect(isSound(wide, recipeVolume(drilledPlate))).toBe(false);
  });

  test("to a file that is cut off", () =>
    expect(() => readStep(stepTextOf(block).slice(0, 900), kernel)).toThrow());
});
