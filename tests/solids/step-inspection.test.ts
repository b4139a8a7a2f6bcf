// The product's own measures of a STEP file: beside a cylinder by hand and OpenCASCADE's volumes, every row of a sound file passes, and
// each kind of damage fails the row that it belongs to.

import type { OpenCascadeInstance } from "replicad-opencascadejs";
import { beforeAll, describe, expect, test } from "vitest";
import { extent } from "../../src/geometry/extent.ts";
import type { LayeredSolid } from "../../src/geometry/solid/solid.ts";
import { inspectStep, type StepInspection } from "../../src/inspection/inspect-step.ts";
import type { InspectionRow } from "../../src/inspection/row.ts";
import { measuredStep, type StepMeasures } from "../../src/inspection/step-measure.ts";
import { readStepFile } from "../../src/inspection/step-reader.ts";
import { printFilesOf } from "../../src/pack/print-files.ts";
import { printed, soundPart } from "../printed/printed-panel.ts";
import { HAND_CYLINDER } from "../support/hand-step.ts";
import { openKernel } from "../support/kernel.ts";
import { openStepReader, readStep } from "../support/step-reader.ts";
import { stepTextOf } from "../support/step-text.ts";
import { randomLayeredSolid } from "./random-solids.ts";
import { drilledPlate, plainBlock } from "./sample-solids.ts";

let kernel: OpenCascadeInstance;
beforeAll(async () => {
  kernel = await openStepReader();
});

const textOf = (solid: LayeredSolid): string => stepTextOf(solid, "part plate");

const measuresOf = (text: string): StepMeasures => {
  const [solid] = readStepFile(text).solids;
  if (solid === undefined) throw new Error("no solid");
  return measuredStep(solid);
};

test("a cylinder of 5 by 20, written by hand, has the surface, volume and box of the formulas", () => {
  const { surface, volume, shells, turned, low, high } = measuresOf(HAND_CYLINDER);
  const sides = [0, 1, 2].map((axis) => high[axis]! - low[axis]!).toSorted((a, b) => a - b);
  const height = volume / (25 * Math.PI);
  expect(volume).toBeCloseTo(500 * Math.PI, 9);
  expect(surface).toBeCloseTo(2 * 25 * Math.PI + 10 * Math.PI * height, 9);
  expect(sides[0]).toBeCloseTo(10, 9);
  expect(sides[1]).toBeCloseTo(10, 9);
  expect(sides[2]).toBeCloseTo(height, 9);
  expect([shells, turned]).toEqual([1, 0]);
});

describe("the same volume as OpenCASCADE's", () => {
  const seeds = Array.from({ length: 12 }, (_, index) => 1 + index);
  test.each(seeds)("random solid %i", (seed) => {
    const text = textOf(randomLayeredSolid(seed));
    const { volume } = readStep(text, kernel);
    const own = measuresOf(text);
    expect(Math.abs(own.volume - volume) / volume).toBeLessThan(1e-9);
    expect([own.shells, own.turned]).toEqual([1, 0]);
  });
});

const rowsOf = (text: string, of: Partial<StepInspection> = {}): readonly InspectionRow[] =>
  inspectStep(new TextEncoder().encode(text), {
    file: "part.step",
    title: "part plate",
    name: "plate",
    solid: drilledPlate,
    ...of,
  });

const failed = (rows: readonly InspectionRow[]): readonly string[] => [
  ...new Set(rows.filter(({ passed }) => !passed).map(({ what }) => what)),
];

describe("every row of a sound file passes", () => {
  test("of the drilled plate, with its volume of 24629.73 mm³", () => {
    const rows = rowsOf(textOf(drilledPlate));
    expect(rows.map(({ what }) => what)).toEqual(
      "content part count outward shells volume box box box".split(" "),
    );
    expect(failed(rows)).toEqual([]);
    // 146.05 x 57.15 x 3 less four holes of 6.6.
    const byHand = (146.05 * 57.15 - 4 * Math.PI * 3.3 * 3.3) * 3;
    const volume = rows.find(({ what }) => what === "volume");
    expect(Number(volume?.measured)).toBeCloseTo(byHand, 3);
  });

  test.each([1, 2, 3, 4, 5, 6])("of random solid %i", (seed) => {
    const solid = randomLayeredSolid(seed);
    expect(rowsOf(textOf(solid), { solid }).filter(({ passed }) => !passed)).toEqual([]);
  });
});

test("a part's print files are measured, each of them, STEP too", async () => {
  const { spacer } = printed({
    height: "8 modules",
    components: "\n  a: { part: toggle-12, at: centre }",
  });
  const { files, inspection } = printFilesOf(soundPart(spacer), await openKernel());
  const paths = files.map(({ path }) => path).filter((path) => path.startsWith("print/"));
  expect(paths.map((path) => path.slice(path.lastIndexOf(".")))).toEqual([".3mf", ".stl", ".step"]);
  expect([...new Set(inspection.map(({ file }) => file))]).toEqual(paths);
  expect(inspection.filter(({ passed }) => !passed)).toEqual([]);
});

describe("damage fails its row", () => {
  const sound = textOf(drilledPlate);
  const spoiled = (from: string | RegExp, to: string): readonly InspectionRow[] => {
    const text = sound.replace(from, to);
    expect(text).not.toBe(sound);
    return rowsOf(text);
  };

  test("a corner moved by two micrometres: its edges, its volume and its box", () => {
    const rows = spoiled("(146.05,57.15,3.)", "(146.052,57.15,3.)");
    expect(failed(rows)).toContain("content");
    expect(failed(rows)).toContain("box");
    expect(rows.find(({ what }) => what === "content")?.measured).toContain("between");
  });

  test("a hole of 6.604 mm where 6.6 must be", () => {
    expect(failed(spoiled(/(CIRCLE\('',#\d+,)3\.3\)/, "$13.302)"))).toContain("content");
    const wide = sound.replaceAll(/((?:CIRCLE|CYLINDRICAL_SURFACE)\('',#\d+,)3\.3\)/g, "$13.302)");
    expect(wide).not.toBe(sound);
    expect(failed(rowsOf(wide))).toContain("volume");
  });

  test("another solid, sound in itself", () => {
    const longer = textOf(plainBlock(extent(0, 0, 146.05, 57.1503), 0, 3));
    expect(failed(rowsOf(longer))).toEqual(["volume", "box"]);
  });

  test("a face the other way", () => {
    const rows = spoiled(/(ADVANCED_FACE\('',\([^)]*\),#\d+,)\.T\.\)/, "$1.F.)");
    expect(failed(rows)).toEqual(["outward"]);
    expect(rows.find(({ what }) => what === "outward")?.measured).toBe("1 face the other way");
  });

  test("a face left out", () => {
    const rows = spoiled(/(CLOSED_SHELL\('',\()#\d+,/, "$1");
    expect(failed(rows)).toContain("content");
  });

  test("inches, another name, and two solids or none", () => {
    expect(failed(spoiled("SI_UNIT(.MILLI.,.METRE.)", "SI_UNIT($,.METRE.)"))).toEqual(["content"]);
    expect(failed(rowsOf(sound, { title: "other" }))).toEqual(["part"]);
    expect(failed(spoiled("MANIFOLD_SOLID_BREP", "NO_SUCH_THING"))).toContain("count");
    const twice = spoiled(/(#)(\d+)(=MANIFOLD_SOLID_BREP[^;]*;)/, "$1$2$3\n#99999$3");
    expect(failed(twice)).toEqual(["count"]);
  });

  test("a file that is cut off, or empty", () => {
    expect(failed(rowsOf(sound.slice(0, sound.length / 2)))).toContain("content");
    expect(failed(rowsOf(""))).toEqual(["content", "part", "count"]);
  });
});
