// What a rule says against what it computes: whose limit it is, and values that work, which never come from rounding a limit to
// the wrong side.

import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const found = (
  code: string,
  said: { readonly panel: string; readonly shed: string },
): readonly Finding[] => {
  const files = new Map([
    [
      "panel.yaml",
      `consolewright: 1\nkind: panel\nname: check\nworkshop: shed.yaml\n${said.panel}`,
    ],
    ["shed.yaml", `consolewright: 1\nkind: workshop\nname: shed\n${said.shed}`],
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

test("a warm box is told how many watts it bears, by the same model", () => {
  const [box] = found("checks/box-warm", {
    panel: `mount: corner-screws
width: 120 mm
height: 80 mm
stack:
  - { layer: face, sheet: opal, finish: painted }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-144-5v-addressable, circuit: night } }
fixings: { screws: m3, dowels: 3 mm }
components:
  a: { part: led-5, at: { x: 60 mm, y: 40 mm } }
`,
    shed: `stock:
  opal: { material: acrylic-cast, colour: opal, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
  black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }
finishes:
  painted: { coats: [black, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
`,
  });
  const [, watts, room] = /: ([\d.]+) W in a closed box .* in a room of (\d+) °C/.exec(
    box!.message,
  )!;
  const [, bears] = /([\d.]+) W or less keep it from softening\.$/.exec(box!.message)!;
  // What rises with the watts is the difference from the room.
  const share = (box!.limit!.value - Number(room)) / (box!.measured!.value - Number(room));
  expect(Number(bears)).toBeCloseTo(Number(watts) * share, 0);
  expect(Number(bears)).toBeLessThan(Number(watts) * share + 0.05);
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
