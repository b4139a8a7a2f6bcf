// Panels by chance: sensible and crowded ones, lit and unlit, with and without tray, on beds of any size. The same seed
// gives the same panel. Whatever it asks for, its solids must come out sound.

import type { PrintedPart } from "../../src/parts/printed/printed-part.ts";
import { printed } from "./printed-panel.ts";

/** Mulberry32 (public domain): a number from 0 to 1 at each call. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const PARTS = [
  "toggle-12",
  "toggle-12-guarded",
  "led-5-bezel",
  "led-3",
  "pot-16",
  "rotary-12",
  "push-button-12",
  "tactile-12-cap",
  "seven-segment-4-056",
  "lamp-window-18x12",
] as const;

const STRIPS = [
  "strip-60-12v",
  "strip-60-5v",
  "strip-120-5v",
  "strip-144-5v-addressable",
  "led-board-2-18x12",
] as const;

const BOARDS = ["avr-328-45x18", "expander-16-50x21", "lamp-driver-8x8-50x32"] as const;

export interface RandomPanel {
  readonly keys: Readonly<Record<string, string>>;
  readonly workshop: string;
  readonly stock: string;
}

function randomPanel(seed: number): RandomPanel {
  const random = seeded(seed);
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)]!;
  const isRack = random() < 0.15;
  const modules = 6 + Math.floor(random() * 14);
  const width = isRack ? 482.6 : 146.05;
  const height = isRack ? 132.56 : modules * 9.525;
  const count = 1 + Math.floor(random() * (isRack ? 20 : 9));
  const components = Array.from({ length: count }, (_, index) => {
    const x = (20 + random() * (width - 40)).toFixed(2);
    const y = (8 + random() * (height - 16)).toFixed(2);
    return `  c${index + 1}: { part: ${pick(PARTS)}, at: { left: ${x} mm, bottom: ${y} mm } }`;
  });
  const apart =
    random() < 0.3
      ? `, apart: [{ circuit: day, around: [c1], gap: ${(2 + 20 * random()).toFixed(1)} mm }]`
      : "";
  const lighting =
    random() < 0.7 ? `, lighting: { strip: ${pick(STRIPS)}, circuit: night${apart} }` : "";
  const depth = (9 + random() * 12).toFixed(1);
  const tray =
    random() < 0.5
      ? `\n  - { layer: tray, behind: ${(12 + 30 * random()).toFixed(0)} mm, boards: [${pick(BOARDS)}, ${pick(BOARDS)}] }`
      : "";
  const bed = 150 + Math.floor(random() * 150);
  const line = pick([0.4, 0.42, 0.45, 0.5, 0.6]);
  return {
    keys: {
      mount: isRack ? "rack-19" : "console-rail",
      height: isRack ? "3 U" : `${modules} modules`,
      stack: `
  - { layer: face, sheet: opal-3 }
  - { layer: backing, sheet: metal-2 }
  - { layer: spacer, print: black-petg, depth: ${depth} mm${lighting} }${tray}`,
      fixings: `{ screws: ${pick(["m3", "m4", "m2.5"])}, dowels: 3 mm }`,
      components: `\n${components.join("\n")}`,
    },
    workshop: `machines:\n  p: { type: printer, bed: [${bed}, ${bed}, 200], line: ${line} mm, layer: 0.2 mm }\ninside: ${pick(["paint", "white-body", "liner"])}\n`,
    stock: "  white-petg: { material: petg, colour: white }",
  };
}

export const partsOfRandomPanel = (seed: number): readonly PrintedPart[] => {
  const { keys, workshop, stock } = randomPanel(seed);
  return printed(keys, workshop, stock).parts;
};
