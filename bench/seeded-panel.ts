// A panel of 60 components and 120 markings, made from a seed: sound, different for every seed, and
// the same on every machine. Gives the text of the panel, of its workshop, and of a console of many such panels.

const COMPONENTS = 60;

const COLUMNS = 5;
const ROWS = COMPONENTS / COLUMNS;

/** Toggles beside lamps beside keys, row by row; all fit the grid below and keep the people's distances. */
const ROW_PARTS = ["toggle-6", "led-5-bezel", "toggle-6-2p", "led-5-bezel", "tactile-12-cap"];

const WORDS =
  "PUMP FUEL VALVE HEAT FAN LAMP HORN WIPER BILGE RADIO DECK MAST STERN BOW TANK DRAIN FEED MAIN SPARE TEST".split(
    " ",
  );

export const WORKSHOP_TEXT = `consolewright: 1
kind: workshop
name: bench
stock:
  opal: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm, measured: 2.95 mm, dated: 2026-01-31 }
  black: { material: acrylic-cast, colour: black, light: opaque, nominal: 3 mm, measured: 2.95 mm, dated: 2026-01-31 }
finishes:
  painted: { coats: [white, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
machines:
  laser:
    type: co2-laser
    bed: [600, 500]
    spot: 0.15 mm
    kerf: in-file
    measured:
      - { stock: opal, kerf: [0.21, 0.19], dated: 2026-01-31 }
      - { stock: black, kerf: [0.21, 0.19], dated: 2026-01-31 }
use: { default: laser }
`;

export type BenchFont = "b612" | "single-line";

/** `round` changes the text and nothing else: a panel that nobody has read before. */
function seededPanel(seed: number, round: number, font: BenchFont): string {
  const random = randomNumbers(seed);
  const places = Array.from({ length: COMPONENTS }, (_, index) => ({
    name: `c${index + 1}`,
    part: ROW_PARTS[Math.floor(index / COLUMNS) % ROW_PARTS.length]!,
    x: 25.025 + (index % COLUMNS) * 24 + Math.floor(random() * 20) / 100,
    y: 24 + (ROWS - 1 - Math.floor(index / COLUMNS)) * 33 + Math.floor(random() * 20) / 100,
    word: WORDS[Math.floor(random() * WORDS.length)]!,
  }));
  return [
    "consolewright: 1",
    "kind: panel",
    `name: bench-${seed}`,
    `title: Bench panel ${seed}`,
    `revision: R${round}`,
    "workshop: workshop.yaml",
    "mount: console-rail",
    "height: 44 modules",
    "viewing-distance: 600 mm",
    `lettering: { font: ${font} }`,
    "stack:",
    "  - { layer: face, sheet: opal, finish: painted }",
    "  - { layer: backing, sheet: black }",
    "fixings: { screws: m3, dowels: 3 mm }",
    "components:",
    ...places.map(
      ({ name, part, x, y, word }) =>
        `  ${name}: { part: ${part}, at: { x: ${x.toFixed(3)} mm, y: ${y.toFixed(3)} mm }, legend: ${word} }`,
    ),
    "markings:",
    ...places.map(
      ({ name, x, y }, index) =>
        `  - legend: { name: number-${name}, text: "${index + 1}", height: 3 mm, at: { x: ${x.toFixed(3)} mm, y: ${(y - 13).toFixed(3)} mm } }`,
    ),
    "",
  ].join("\n");
}

export interface BenchDesign {
  readonly entry: string;
  readonly files: ReadonlyMap<string, string>;
}

export const panelDesign = (round: number, font: BenchFont): BenchDesign => ({
  entry: "panel.yaml",
  files: new Map([
    ["panel.yaml", seededPanel(1, round, font)],
    ["workshop.yaml", WORKSHOP_TEXT],
  ]),
});

/** A console of `count` panels, each with a seed of its own. */
export function consoleDesign(count: number, round: number): BenchDesign {
  const seeds = Array.from({ length: count }, (_, index) => index + 1);
  const console = [
    "consolewright: 1",
    "kind: console",
    "name: bench",
    "title: Bench console",
    "workshop: workshop.yaml",
    "panels:",
    ...seeds.map((seed) => `  - { file: panel-${seed}.yaml, as: p${seed} }`),
    "",
  ].join("\n");
  return {
    entry: "console.yaml",
    files: new Map([
      ["console.yaml", console],
      ["workshop.yaml", WORKSHOP_TEXT],
      ...seeds.map((seed): [string, string] => [
        `panel-${seed}.yaml`,
        seededPanel(seed, round, "b612"),
      ]),
    ]),
  };
}

/** Numbers from 0 to below 1 by a linear congruence of 32 bits (constants of Numerical Recipes). */
export function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
