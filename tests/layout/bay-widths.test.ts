// What is open between the strips under a bay's panels: as it comes out, and below nothing where they would overlap.

import { expect, test } from "vitest";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const clearOf = (width: number): number | undefined =>
  compile(
    {
      entry: "console.yaml",
      files: new Map([
        [
          "console.yaml",
          "consolewright: 1\nkind: console\nname: stand\nworkshop: shed.yaml\nbays:\n  desk: { mount: corner-screws, at: [0, -400, 700], along: [1, 0, 0], length: 200 mm, depth: 120 mm }\npanels:\n  - { file: slip.yaml, as: slip, bay: desk }\n",
        ],
        [
          "shed.yaml",
          "consolewright: 1\nkind: workshop\nname: shed\nstock:\n  plate: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }\n",
        ],
        [
          "slip.yaml",
          `consolewright: 1\nkind: panel\nname: slip\nworkshop: shed.yaml\nmount: corner-screws\nwidth: ${width} mm\nheight: 90 mm\nstack: [{ layer: face, sheet: plate }]\n`,
        ],
      ]),
      binaries: new Map(),
    },
    testLibrary(),
  ).console?.layout.bays[0]?.clearWidth;

// Screws 7 mm from the edges, in the middle of strips of 14 mm: 28 mm are covered.
test.each([
  [120, 92],
  [28, 0],
  [18, -10],
])("a panel of %d mm leaves %d mm between them", (width, clear) => {
  expect(clearOf(width)).toBeCloseTo(clear, 9);
});
