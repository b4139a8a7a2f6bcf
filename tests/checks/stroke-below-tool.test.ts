// Strokes that a tool can't make: what is said to work is what a builder would do, with a value, and the height only leads
// where letters need to grow by little. Sizes are those of the text: a router's finest tool, a laser's spot.

import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const found = (machine: string, height: string): Finding => {
  const files = new Map([
    [
      "panel.yaml",
      `consolewright: 1
kind: panel
name: check
workshop: shed.yaml
mount: corner-screws
width: 200 mm
height: 120 mm
viewing-distance: 200 mm
stack:
  - { layer: face, sheet: plate }
lettering: { height: ${height} }
components:
  a: { part: led-5, at: centre, legend: PUMP }
`,
    ],
    [
      "shed.yaml",
      `consolewright: 1
kind: workshop
name: shed
stock:
  plate: { material: acrylic-cast, colour: black, nominal: 3 mm, measured: 3 mm, dated: 2026-01-31 }
machines:
  maker: ${machine}
use: { face: maker }
`,
    ],
  ]);
  const [panel] = compile({ entry: "panel.yaml", files }, testLibrary()).panels;
  const all = panel?.findings ?? [];
  const one = all.find(({ code }) => code === "checks/stroke-below-tool");
  if (one === undefined) throw new Error(all.map(({ message }) => message).join("\n"));
  return one;
};

const ROUTER = (tool: string): string =>
  `{ type: router, bed: [600, 400], tools: [{ diameter: ${tool} }] }`;

test("a router's tool that would want capitals of tens of millimetres is to be changed, not the height", () => {
  const { message, remedies, measured } = found(ROUTER("3 mm"), "4 mm");
  const stroke = Math.floor(measured!.value * 1000) / 1000;
  expect(message).toContain(
    `A tool of ${stroke} mm or less cuts them, and so does a laser with a spot as fine. height: `,
  );
  // A single pass would be three quarters of the height.
  expect(message).not.toContain("single-line");
  expect(remedies).toEqual([]);
});

test("a tool of less than a sixth of the height is told the fonts that it can cut first", () => {
  const { message } = found(ROUTER("1 mm"), "6.2 mm");
  expect(message).toMatch(
    /too fine\. font: single-line, or an outline font with strokes of 1 mm at this height/,
  );
});

test("letters that lack a little are told the height first, with the edit", () => {
  const { message, remedies } = found(
    "{ type: co2-laser, bed: [600, 400], spot: 0.15 mm }",
    "1.2 mm",
  );
  expect(message).toMatch(
    /too fine\. height: 1\.\d mm makes them as wide\. .* A spot of 0\.1\d+ mm or less cuts them\.$/,
  );
  expect(remedies).toHaveLength(1);
});

test("a tool of 1/32 in is told strokes that are no finer than it", () => {
  // 25.4 / 32 = 0.79375.
  const { message } = found(ROUTER("1/32 in"), "5.2 mm");
  expect(message).toContain("an outline font with strokes of 0.794 mm at this height");
});
