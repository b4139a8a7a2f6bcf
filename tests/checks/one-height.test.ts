// Letters that are too fine for the tool and too small for the eye: both findings name the one height that mends both.

import { expect, test } from "vitest";
import { findingsOf } from "../findings/example.ts";

const found = (height: string) =>
  findingsOf(
    new Map([
      [
        "panel.yaml",
        `consolewright: 1
kind: panel
name: mess
workshop: shed.yaml
mount: rack-19
height: 2 U
viewing-distance: 700 mm
stack: [{ layer: face, sheet: plate, finish: paint-filled }]
components:
  f: { part: led-5, at: centre, legend: { text: F1, height: ${height} } }
`,
      ],
      [
        "shed.yaml",
        `consolewright: 1
kind: workshop
name: shed
stock:
  plate: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
machines:
  router: { type: router, bed: [600, 400], tools: [{ diameter: 3 mm }, { diameter: 0.2 mm }] }
use: { face: router }
`,
      ],
    ]),
  );

// 16 minutes at 700 mm: 2 x 700 x tan(8') is 3.26 mm, above what the tool asks for.
test("the fault names the height that the query asks for", () => {
  const all = found("1.2 mm");
  const named = (code: string) =>
    /height: ([\d.]+ mm)/.exec(all.find((one) => one.code === code)?.message ?? "")?.[1];
  expect(named("checks/legend-too-small")).toBe("3.3 mm");
  expect(named("checks/stroke-below-tool")).toBe("3.3 mm");
  const mended = found("3.3 mm").map(({ code }) => code);
  expect(mended).not.toContain("checks/legend-too-small");
  expect(mended).not.toContain("checks/stroke-below-tool");
});
