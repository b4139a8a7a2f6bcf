// The three files that the format was sketched with: they are read without a finding, and mean what they say.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { includesOf } from "../../src/design/includes.ts";
import { type Design, readDesign } from "../../src/design/read-design.ts";
import { spanOf } from "../../src/design/written.ts";

const sample = (name: string): string =>
  readFileSync(join(import.meta.dirname, "samples", name), "utf8");

const read = (file: string, name: string): Design | null => {
  const { design, findings } = readDesign(file, sample(name));
  expect(findings).toEqual([]);
  return design;
};

describe("the towing winch", () => {
  const text = sample("winch.yaml");
  const panel = read("panels/winch.yaml", "winch.yaml");

  test("is a panel of eleven modules, legends sized for its viewing distance", () => {
    expect(panel).toMatchObject({
      kind: "panel",
      name: "winch",
      title: "Towing winch",
      revision: "B",
      dated: "2026-10-02",
      mount: "console-rail",
      height: { kind: "pitches", count: 11, unit: "modules" },
      viewingDistance: 650,
      // 2 x 650 x tan(10') = 3.7816 (NUREG-0700 Rev 3, 11.4.1.5-1: 20 arc minutes preferred), up to the next tenth.
      lettering: { height: 3.8 },
      unread: [],
    });
  });

  test("has four layers of four kinds and its fixings", () => {
    expect(panel).toMatchObject({
      stack: [
        { kind: "sheet", id: "face", sheet: "opal-acrylic-3", finish: "paint-and-engrave" },
        { kind: "sheet", id: "backing", finish: null },
        { kind: "spacer", id: "spacer", depth: 14, lighting: { circuit: "night" } },
        { kind: "tray", id: "tray", behind: 18, boards: [{ board: "avr-328-45x18", turn: null }] },
      ],
      fixings: { screws: "m3", dowels: 3, at: null },
    });
  });

  test("keeps places as intent", () => {
    expect(panel).toMatchObject({
      components: [
        {
          id: "brake",
          at: {
            across: { kind: "from-low", distance: 24, key: "left" },
            along: { kind: "from-high", distance: 30, key: "top" },
          },
          legend: { text: "BRAKE" },
          positions: { labels: { up: "HELD", down: "FREE" } },
        },
        {
          id: "speed",
          fittedWith: [{ role: "knob", part: "knob-22-skirt" }],
          at: {
            across: {
              kind: "beside",
              neighbour: "brake",
              toward: "high",
              measure: "centres",
              distance: 38,
            },
            along: { kind: "in-line", neighbour: "brake" },
          },
          scale: { from: 0, to: 10, major: 2, minor: 1, legend: { text: "HAUL SPEED" } },
        },
        { id: "tension", fitted: "later", dial: { sweep: 120, unit: "kN" } },
        {
          kind: "pattern",
          id: "warn",
          part: "led-5-bezel",
          pattern: { kind: "row", count: 4, pitch: 15 },
          legends: [{ text: "PAY OUT" }, { text: "HAUL" }, { text: "SLIP" }, { text: "TRIP" }],
        },
      ],
      spares: [{ part: "toggle-12", count: 1 }],
      markings: [
        { kind: "border", id: "border-1", around: ["brake", "speed"], legend: { text: "DRIVE" } },
      ],
    });
  });

  test("knows where each value was written", () => {
    if (panel?.kind !== "panel") throw new Error("it is a panel");
    const [brake] = panel.components;
    if (brake?.kind !== "component") throw new Error("it is a component");
    const at = (span: { readonly start: number; readonly end: number }): string =>
      text.slice(span.start, span.end);
    expect(at(spanOf(brake.written, "part"))).toBe("toggle-12-locking");
    expect(at(spanOf(brake.at.written, "left"))).toBe("24 mm");
    expect(at(spanOf(panel.written, "height"))).toBe("11 modules");
  });
});

test("the starboard console has two bays, two panels and a blanking panel", () => {
  const design = read("console.yaml", "starboard.yaml");
  expect(design).toMatchObject({
    kind: "console",
    workshop: "workshop.yaml",
    catalogue: ["my-parts.yaml"],
    operator: { seatHeight: 430, at: [-250, 0], hand: "right" },
    bays: {
      aft: {
        length: { kind: "pitches", count: 60, unit: "modules" },
        at: [0, -420, 620],
        along: [1, 0, 0],
        cant: 8,
        depth: 180,
      },
      forward: { length: { count: 40 }, slope: 12 },
    },
    panels: [
      { file: "panels/generators.yaml", as: "generators", bay: "aft", module: 0, after: null },
      { as: "winch", module: null, after: "generators" },
    ],
    blankings: [{ length: { count: 4, unit: "modules" }, bay: "aft", after: "winch" }],
    frame: { type: "side-console", doorway: [700, 1900] },
    obstacles: [
      { name: "seat bracket", shape: { kind: "box", size: [40, 120, 90] }, at: [300, -360, 500] },
    ],
  });
  expect(includesOf("console.yaml", sample("starboard.yaml"))).toEqual([
    "workshop.yaml",
    "my-parts.yaml",
    "panels/generators.yaml",
    "panels/winch.yaml",
  ]);
});

test("the shed has stock, finishes and three machines", () => {
  const design = read("workshop.yaml", "shed.yaml");
  expect(design).toMatchObject({
    kind: "workshop",
    stock: {
      "opal-acrylic-3": {
        id: "opal-acrylic-3",
        light: "translucent",
        nominal: 3,
        measured: 2.86,
        dated: "2026-10-02",
      },
      "black-acrylic-3": { light: "opaque", measured: null },
      "birch-ply-12": { material: "plywood", nominal: 12, measured: 11.6 },
      "black-petg": { opaqueFrom: 1.35 },
    },
    finishes: { "paint-and-engrave": { coats: ["white", "black", "black"], thickness: 0.08 } },
    machines: {
      laser: {
        kind: "co2-laser",
        bed: [600, 400],
        spot: 0.15,
        measured: [{ stock: "opal-acrylic-3", kerf: [0.21, 0.19], holeAllowance: 0 }],
      },
      router: { kind: "router", tools: [{ diameter: 3.175 }] },
      printer: {
        kind: "printer",
        bed: [220, 220, 250],
        holes: [
          { to: 6, add: 0.3 },
          { to: 15, add: 0.25 },
        ],
      },
    },
    use: { face: "laser", backing: "laser", spacer: "printer", frame: "router" },
    paper: "A4",
  });
});
