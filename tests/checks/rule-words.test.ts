// What a rule says against what it computes: whose limit it is, and values that work, which never come from rounding a limit to
// the wrong side.

import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const found = (
  code: string,
  said: { readonly panel: string; readonly shed: string; readonly parts?: string },
): readonly Finding[] => {
  const files = new Map([
    [
      "panel.yaml",
      `consolewright: 1\nkind: panel\nname: check\nworkshop: shed.yaml\n${said.panel}`,
    ],
    ["shed.yaml", `consolewright: 1\nkind: workshop\nname: shed\n${said.shed}`],
    ["parts.yaml", said.parts ?? ""],
  ]);
  const [panel] = compile({ entry: "panel.yaml", files }, testLibrary()).panels;
  return (panel?.findings ?? []).filter((one) => one.code === code);
};

const LAMP = `mount: corner-screws
width: 120 mm
height: 80 mm
stack: [{ layer: face, sheet: plate }]
components:
  a: { part: led-3, at: { x: centre, y: centre } }
`;

const shed = (machine: string): string => `stock:
  plate: { material: acrylic-cast, colour: black, nominal: 3 mm, measured: 3 mm, dated: 2026-01-31 }
machines:
  maker: ${machine}
use: { face: maker }
`;

test.each([
  ["{ type: co2-laser, bed: [700, 500], spot: 1 mm, kerf: left-to-cutter }", 4, "A spot"],
  ["{ type: router, bed: [700, 500], tools: [{ diameter: 6 mm }] }", 1, "A tool"],
  ["{ type: drill-bench, bed: [700, 500], drills: [6 mm] }", 1, "A drill"],
])("%s is told what makes the hole: of a beam four spots go into it", (machine, times, what) => {
  const [hole] = found("checks/hole-below-machine", { panel: LAMP, shed: shed(machine) });
  const most = Math.floor((hole!.measured!.value / times) * 1000 + 1e-6) / 1000;
  expect(hole!.message).toMatch(new RegExp(`${what} of ${most} mm or less makes it\\.$`));
});

test("a range that is remembered is no standard", () => {
  const panel = LAMP.replace("led-3", "toggle-6");
  const limitOf = (material: string): unknown =>
    found("checks/unmeasured-sheet", {
      panel,
      shed: `stock:\n  plate: { material: ${material}, colour: black, nominal: 3 mm }\n`,
    })[0]?.source;
  expect(limitOf("acrylic-cast")).toMatchObject({ kind: "standard" });
  expect(limitOf("aluminium")).toMatchObject({ kind: "memory" });
});

const BOX = `mount: corner-screws
width: 120 mm
height: 80 mm
stack:
  - { layer: face, sheet: opal, finish: painted }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip, circuit: night } }
fixings: { screws: m3, dowels: 3 mm }
components:
  a: { part: led-5, at: { x: 60 mm, y: 40 mm } }
`;

const BOX_SHED = `stock:
  opal: { material: acrylic-cast, colour: opal, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
  black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }
finishes:
  painted: { coats: [black, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
`;

/** A strip of one lamp a cut, each of which draws so much at 5 V. */
const strip = (milliamps: number): string => `consolewright: 1
kind: parts
name: parts
strips:
  strip:
    title: Strip of the test
    width: 12
    height: 2.2
    per-metre: 144
    leds-per-cut: 1
    joint: 15
    volts: 5
    milliamps-per-cut: ${milliamps.toFixed(4)}
    half-angle: 60
    lumens-per-led: 18
    figures: { source: "typical strip, from memory, unverified", kind: memory }
`;

test("a warm box is told how many watts it bears: by as many it is sound, by a tenth more it is not", () => {
  const warm = (milliamps: number): readonly string[] =>
    found("checks/box-warm", {
      panel: `catalogue: [parts.yaml]\n${BOX}`,
      shed: BOX_SHED,
      parts: strip(milliamps),
    }).map(({ message }) => message);
  const [message = ""] = warm(60);
  const [, watts] = /: ([\d.]+) W in a closed box/.exec(message)!;
  const [, bears] = /([\d.]+) W or less keep it from softening\.$/.exec(message)!;
  // A lamp of 60 mA at 5 V draws 0.3 W.
  const lamps = Math.round(Number(watts) / 0.3);
  expect(lamps * 0.3).toBeCloseTo(Number(watts), 1);
  const milliampsFor = (all: number): number => (all * 1000) / (5 * lamps);
  expect(warm(milliampsFor(Number(bears)))).toEqual([]);
  expect(warm(milliampsFor(Number(bears) + 0.1))).toHaveLength(1);
});

test("a height that misses its modules by 3 µm says so", () => {
  const [off] = found("checks/whole-modules", {
    panel: LAMP.replace("corner-screws", "console-rail")
      .replace("width: 120 mm\n", "")
      .replace("80 mm", "57.147 mm"),
    shed: shed("{ type: co2-laser, bed: [700, 500], spot: 0.15 mm, kerf: left-to-cutter }"),
  });
  // Six modules of 9.525 mm.
  expect(off!.message).toContain("57.147 mm is");
  expect(off!.message).toContain("6 modules are 57.150 mm, 0.003 mm more");
});
