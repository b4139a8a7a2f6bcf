// A panel lies on its rails: looked at from before its face it is drawn whole, whatever hangs behind it, and whichever end of a
// rising bay it stands at.

import { expect, test } from "vitest";
import { seenBodies } from "../../src/drawings/console-bodies-view.ts";
import { PLAN } from "../../src/drawings/console-view.ts";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import { extentWidth } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const planOf = (bay: string): ReturnType<typeof seenBodies> => {
  const project = compile(
    {
      entry: "console.yaml",
      files: new Map([
        [
          "console.yaml",
          `consolewright: 1
kind: console
name: mix
workshop: workshop.yaml
bays:
  low: { mount: corner-screws, at: [100, -400, 640], along: [1, 0, 0], ${bay} length: 600 mm, depth: 120 mm, clear-width: 300 mm }
panels:
  - { file: wide.yaml, as: wide, bay: low, module: 0 }
frame: { type: side-console, sheet: ply-18 }
`,
        ],
        [
          "wide.yaml",
          `consolewright: 1
kind: panel
name: wide
mount: corner-screws
width: 300 mm
height: 200 mm
depth: 100 mm
stack: [{ layer: face, sheet: aluminium-2 }]
components:
  volts: { part: meter-72, at: { x: centre, y: centre }, legend: VOLTS }
`,
        ],
        [
          "workshop.yaml",
          `consolewright: 1
kind: workshop
name: shed
stock:
  ply-18: { material: plywood, colour: birch, light: opaque, nominal: 18 mm, measured: 17.4 mm, dated: 2026-11-20 }
machines:
  router: { type: router, bed: [1300, 900], tools: [{ diameter: 6 mm }, { diameter: 3.175 mm }, { diameter: 1 mm }] }
use: { face: router, frame: router }
`,
        ],
      ]),
    },
    testLibrary(),
  );
  const { console } = project;
  if (console?.frame == null) throw new Error("the console has a frame");
  const { layout, frame } = console;
  const printedParts = new Map(project.panels.map((each) => [each.name, each.printedParts]));
  const bodies = consoleBodies({ layout, printedParts, frame });
  return seenBodies({ layout, bodies, frame }, PLAN);
};

/** How wide the last area is that is painted over a place of the sheet. */
const widthOnTop = ({ items }: ReturnType<typeof seenBodies>, x: number, y: number): number => {
  const boxes = items.flatMap((item) =>
    item.kind === "fill" ? item.regions.map(({ outline }) => contourExtent(outline)) : [],
  );
  const top = boxes.findLast(
    ({ minX, maxX, minY, maxY }) => minX < x && x < maxX && minY < y && y < maxY,
  );
  return top === undefined ? 0 : extentWidth(top);
};

// Its middle stands 400 to the right, its lower edge 100 forward: from 250 to 550, and what lies 141 or more from its middle lies on rails.
test.each([
  ["flat", "", 300],
  ["rising", "slope: 20 deg,", 300],
  ["canted", "cant: 10 deg,", 300 * Math.cos((10 * Math.PI) / 180)],
])("the panel of a %s bay is drawn whole over its rails", (_, bay, width) => {
  const plan = planOf(bay);
  for (const x of [255, 545]) expect(Math.abs(widthOnTop(plan, x, 150) - width)).toBeLessThan(1);
});
