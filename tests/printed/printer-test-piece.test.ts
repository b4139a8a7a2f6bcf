// The printer's test piece: nominal sizes on it, one closed solid a part, and readings that become a profile.

import { beforeAll, describe, expect, test } from "vitest";
import { enterPrinterReadings } from "../../src/cli/enter-printer-readings.ts";
import { readDesign } from "../../src/design/read-design.ts";
import type { PrinterDesign, WorkshopDesign } from "../../src/design/workshop-design.ts";
import { contourArea, contourExtent } from "../../src/geometry/measure.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import { packOfPrinterTestPiece } from "../../src/pack/printer-test-piece-pack.ts";
import { allowedHole, clearancesOf, pegDiameter } from "../../src/parts/printed/print-allowance.ts";
import { printerTestPiece } from "../../src/parts/printed/printer-test-piece.ts";
import { PRINTER_TEST_FEATURES } from "../../src/parts/printed/printer-test-piece-features.ts";
import { readPrinter } from "../../src/parts/printed/printer-test-piece-readings.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import { printed } from "./trim-solid-check.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

const SHED = `consolewright: 1
kind: workshop
name: shed   # behind the house
stock:
  black-petg: { material: petg, colour: black }   # a new roll
machines:
  printer: { type: printer, bed: [220, 220, 250], line: 0.45 mm, layer: 0.2 mm, holes: [{ to: 6, add: 0.9 }] }
`;

const workshop = (text = SHED): WorkshopDesign => {
  const { design, findings } = readDesign("shed.yaml", text);
  if (design?.kind !== "workshop" || findings.length > 0) throw new Error(JSON.stringify(findings));
  return design;
};

const printerOf = ({ machines }: WorkshopDesign): PrinterDesign => {
  const { printer } = machines;
  if (printer?.kind !== "printer") throw new Error("no printer");
  return printer;
};

const shed = workshop();
const [plate, key] = printerTestPiece(
  printerOf(shed),
  shed.stock["black-petg"]!,
  testLibrary().lettering,
);

const layersOf = (part: typeof plate) => {
  const { solid } = part!.bodies[0]!;
  if (solid.kind !== "layered") throw new Error("a test piece is layers");
  return solid.layers;
};

describe("the plate", () => {
  test("has its holes, slots and walls at nominal size, whatever the printer's allowances are", () => {
    const [sheet] = layersOf(plate);
    const holes = sheet!.regions[0]!.holes.map(({ contour }) => contour);
    const circles = holes.filter(({ kind }) => kind === "circle");
    const diameters = circles.map((hole) => {
      const { minX, maxX } = contourExtent(hole);
      return maxX - minX;
    });
    for (const [index, size] of [2, 3, 4, 5, 6, 8, 10, 12, 15].entries())
      expect(diameters[index]).toBeCloseTo(size, 9);
    // The key is 3 x 10: each slot is wider by its clearance on both sides.
    const slots = holes.filter(({ kind }) => kind === "loop").map(contourExtent);
    for (const [index, side] of [0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5].entries()) {
      const { minX, maxX, minY, maxY } = slots[index]!;
      expect(maxX - minX).toBeCloseTo(3 + 2 * side, 9);
      expect(maxY - minY).toBeCloseTo(10 + 2 * side, 9);
    }
    // One to six lines of 0.45.
    const walls = layersOf(plate)
      .at(-1)!
      .regions.map(({ outline }) => contourExtent(outline.contour));
    expect(walls.map(({ minX, maxX }) => Math.round((maxX - minX) / 0.45))).toEqual([
      1, 2, 3, 4, 5, 6,
    ]);
    for (const [index, { minX, maxX }] of walls.entries())
      expect(maxX - minX).toBeCloseTo(0.45 * (index + 1), 9);
  });

  // Heat-set pilot for M3: 4.0 (makers' datasheets agree), here with 0.1 to 0.5 on it.
  test("has bosses with the datasheet's pilot and five allowances", () => {
    const bored = layersOf(plate)[3]!.regions.filter(({ holes }) => holes.length === 1);
    const pilots = bored.map(
      ({ holes }) => 2 * Math.sqrt(contourArea(holes[0]!.contour) / Math.PI),
    );
    for (const [index, pilot] of [4.1, 4.2, 4.3, 4.4, 4.5].entries())
      expect(pilots[index]).toBeCloseTo(pilot, 9);
  });

  test("and the key print as one closed solid each, and fit a bed of 220", () => {
    for (const part of [plate!, key!]) {
      const mesh = printed(part, kernel);
      expect(mesh).toMatchObject({ faults: [], shells: 1, recipe: [] });
      expect(mesh.strays).toBeLessThan(1e-3);
      for (const axis of [0, 1]) expect(mesh.high[axis]! - mesh.low[axis]!).toBeLessThan(200);
    }
    expect(recipeVolume(key!.bodies[0]!.solid)).toBeCloseTo(3 * 10 * 20, 9);
  });
});

test("the pack has a page that names everything that is read, and an inspection without a miss", () => {
  const pack = packOfPrinterTestPiece([plate!, key!], kernel);
  const page = pack.files.find(({ path }) => path === "measure.md")!;
  const text = new TextDecoder().decode(page.bytes);
  for (const { id } of PRINTER_TEST_FEATURES) expect(text).toContain(`| ${id} `);
  expect(text).toContain("--machine printer --stock black-petg");
  expect(pack.inspection.length).toBeGreaterThan(5);
  expect(pack.inspection.filter(({ passed }) => !passed)).toEqual([]);
  expect(pack.files.filter(({ kind }) => kind === "print-3mf")).toHaveLength(2);
});

const FITS = { press: 0.05, snug: 0.15, sliding: 0.25, loose: 0.4 };

describe("readings", () => {
  test("become what is added to each size, the spread of the first layer, and the fits", () => {
    const read = readPrinter({
      "hole-3": 2.68,
      "hole-10": 9.75,
      "peg-5": 5.08,
      foot: 130.6,
      above: 129.9,
      opaque: 3,
      ...FITS,
    });
    expect(read).toEqual({
      kind: "read",
      readings: {
        holes: [
          { to: 3, add: 0.32 },
          { to: 10, add: 0.25 },
        ],
        pegs: [{ to: 5, add: -0.08 }],
        firstLayer: 0.35,
        clearances: FITS,
        opaqueLines: 3,
      },
    });
  });

  test("of an insert that went in well go before the caliper's for that hole", () => {
    const read = readPrinter({ "hole-3": 2.7, "hole-4": 3.75, "hole-5": 4.75, insert: 0.4 });
    if (read.kind !== "read") throw new Error(read.why.join());
    expect(read.readings.holes).toEqual([
      { to: 3, add: 0.3 },
      { to: 4, add: 0.4 },
      { to: 5, add: 0.25 },
    ]);
  });

  test.each([
    ["nothing", {}, "nothing was read"],
    ["a name that is not on the piece", { "hole-7": 7 }, "hole-7 is not on the test piece"],
    ["a slip of the caliper", { "hole-3": 26.8 }, "would be 23.8 mm out"],
    ["a slot that is not there", { ...FITS, snug: 0.17 }, "0.17 does not stand on the piece"],
    ["half of the fits", { press: 0.05 }, "the fits belong together"],
    ["fits the wrong way round", { ...FITS, press: 0.5 }, "a looser fit has no less clearance"],
    ["more places than a caliper has", { "hole-3": 2.68001 }, "2.68001 mm is finer than a caliper"],
    ["a foot alone", { foot: 130.5 }, "foot and above belong together"],
    ["a foot that is narrower", { foot: 129.5, above: 130 }, "a first layer spreads"],
  ])("of %s are refused", (_, measured, why) => {
    const read = readPrinter(measured);
    expect(read.kind === "refused" ? read.why.join("\n") : "read").toContain(why);
  });
});

describe("entered into the workshop", () => {
  const enter = (text: string, measured: Readonly<Record<string, number>>): string => {
    const read = readPrinter(measured);
    if (read.kind !== "read") throw new Error(read.why.join());
    const printer = printerOf(workshop(text));
    const made = enterPrinterReadings("shed.yaml", text, {
      printer,
      stock: "black-petg",
      readings: read.readings,
    });
    if (made.kind !== "entered") throw new Error(made.why);
    return made.text;
  };

  const all = {
    "hole-3": 2.68,
    "hole-6": 5.7,
    "peg-8": 8.1,
    foot: 130.5,
    above: 130.1,
    opaque: 3,
    ...FITS,
  };

  test("they are the profile that printed parts are made by", () => {
    const text = enter(SHED, all);
    const printer = printerOf(workshop(text));
    expect(allowedHole(3, "test", printer)).toMatchObject({
      allowance: 0.32,
      modelled: 3.32,
      measured: true,
    });
    expect(allowedHole(5, "test", printer)).toMatchObject({ allowance: 0.3, measured: true });
    expect(pegDiameter(8, printer)).toBeCloseTo(7.9, 9);
    expect(clearancesOf(printer)).toEqual(FITS);
    expect(printer.firstLayer).toBeCloseTo(0.2, 9);
    // Three lines of 0.45.
    expect(workshop(text).stock["black-petg"]!.opaqueFrom).toBeCloseTo(1.35, 9);
  });

  test("they leave every other word as it was, and a later reading takes the earlier one's place", () => {
    const text = enter(SHED, all);
    expect(text).toContain("name: shed   # behind the house");
    expect(text).toContain("# a new roll");
    expect(text).not.toContain("add: 0.9");
    const later = enter(text, { ...all, "hole-3": 2.6 });
    expect(later).toBe(text.replace("{ to: 3, add: 0.32 }", "{ to: 3, add: 0.4 }"));
    expect(enter(later, all)).toBe(text);
  });

  test("what was not read stays as it is", () => {
    const text = enter(SHED, FITS);
    expect(text).toContain("holes: [{ to: 6, add: 0.9 }]");
    expect(text).not.toContain("opaque-from");
    expect(text).not.toContain("first-layer");
  });
});
