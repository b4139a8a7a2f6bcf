// Legends that end in a sharp foot (R, X, K) lose more than half the spot there when they are drawn in; their own files
// must pass all the same, at any spot that the letters bear.

import { expect, test } from "vitest";
import { invariant } from "../../src/geometry/invariant.ts";
import { compile, packOfProject } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const workshop = (spot: string): string => `consolewright: 1
kind: workshop
name: bench
stock:
  opal-acrylic-3:
    { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-01 }
machines:
  laser:
    type: co2-laser
    bed: [600, 400]
    spot: ${spot}
    kerf: in-file
    measured: [{ stock: opal-acrylic-3, kerf: [0.2, 0.2], dated: 2026-01-02 }]
use: { face: laser }
`;

const panel = (font: string, legend: string): string => `consolewright: 1
kind: panel
name: feet
workshop: bench.yaml
mount: corner-screws
width: 200 mm
height: 80 mm
lettering: { font: ${font} }
stack: [{ layer: face, sheet: opal-acrylic-3, finish: paint-then-cut }]
components:
  lamp: { part: led-5-bezel, at: centre, legend: ${legend} }
`;

test.each([
  ["b612", "XR", "0.15 mm"],
  ["b612", "POWER", "0.2 mm"],
  ["b612-bold", "KEY WAX", "0.25 mm"],
  ["overpass-semibold", "KEY WAX", "0.4 mm"],
])("a sharp foot of %s in %s, engraved with a spot of %s, is no mismatch", (font, legend, spot) => {
  const files = new Map([
    ["feet.yaml", panel(font, legend)],
    ["bench.yaml", workshop(spot)],
  ]);
  const project = compile({ entry: "feet.yaml", files }, testLibrary());
  const [feet] = project.panels;
  invariant(feet !== undefined, "one panel");
  const pack = packOfProject(project, feet, { only: "fascia", card: false });
  expect(pack.inspection.filter(({ passed }) => !passed)).toEqual([]);
  expect(pack.inspection.filter(({ feature }) => feature === "lamp/legend")).not.toEqual([]);
});
