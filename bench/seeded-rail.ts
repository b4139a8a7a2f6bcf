// Panels of 45 components end to end along one bay, each from a seed of its own: for the fit of a console. Nothing is written
// on them; the bodies are what is measured.

import { type BenchDesign, randomNumbers, WORKSHOP_TEXT } from "./seeded-panel.ts";

const COLUMNS = 5;
const ROWS = 9;
const MODULES = 34;
const ROW_PARTS = ["toggle-6", "led-5-bezel", "toggle-6-2p", "led-5-bezel", "tactile-12-cap"];

export const RAIL_COMPONENTS = COLUMNS * ROWS;

export function railDesign(count: number): BenchDesign {
  const seeds = Array.from({ length: count }, (_, index) => index + 1);
  const length = (count * MODULES * 9.525).toFixed(3);
  const console = [
    "consolewright: 1",
    "kind: console",
    "name: rail",
    "workshop: workshop.yaml",
    "bays:",
    `  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: ${length} mm, depth: 180 mm }`,
    "panels:",
    ...seeds.map(
      (seed) =>
        `  - { file: panel-${seed}.yaml, as: p${seed}, bay: aft, ${seed === 1 ? "module: 0" : `after: p${seed - 1}`} }`,
    ),
    "",
  ].join("\n");
  return {
    entry: "console.yaml",
    files: new Map([
      ["console.yaml", console],
      ["workshop.yaml", WORKSHOP_TEXT],
      ...seeds.map((seed): [string, string] => [`panel-${seed}.yaml`, railPanel(seed)]),
    ]),
  };
}

function railPanel(seed: number): string {
  const random = randomNumbers(seed);
  const places = Array.from({ length: RAIL_COMPONENTS }, (_, index) => ({
    part: ROW_PARTS[Math.floor(index / COLUMNS) % ROW_PARTS.length]!,
    x: 25.025 + (index % COLUMNS) * 24 + random() / 5,
    y: 28 + Math.floor(index / COLUMNS) * 33 + random() / 5,
  }));
  return [
    "consolewright: 1",
    "kind: panel",
    `name: rail-${seed}`,
    "workshop: workshop.yaml",
    "mount: console-rail",
    `height: ${MODULES} modules`,
    "stack:",
    "  - { layer: face, sheet: opal, finish: painted }",
    "  - { layer: backing, sheet: black }",
    "fixings: { screws: m3, dowels: 3 mm }",
    "components:",
    ...places.map(
      ({ part, x, y }, index) =>
        `  c${index + 1}: { part: ${part}, at: { x: ${x.toFixed(3)} mm, y: ${y.toFixed(3)} mm } }`,
    ),
    "",
  ].join("\n");
}
