// A component that is moved inward takes its legend along: a place is named at which both are on the panel.

import { expect, test } from "vitest";
import { findingsOf, type Texts } from "../findings/example.ts";
import { remedied } from "../findings/remedied.ts";

const panel = (top: string, height: string): Texts =>
  new Map([
    [
      "panel.yaml",
      `consolewright: 1
kind: panel
name: mess
mount: rack-19
height: 2 U
stack: [{ layer: face, sheet: aluminium-2, finish: paint-filled }]
components:
  f: { part: fuse-holder-5x20, at: { left: 300 mm, top: ${top} }, legend: { text: F1, height: ${height} } }
`,
    ],
  ]);

const faults = (texts: Texts) => findingsOf(texts).filter(({ severity }) => severity === "fault");

test("out of the edge's rim it goes as far as its legend asks for", () => {
  const texts = panel("6 mm", "4 mm");
  const rim = faults(texts).find(({ code }) =>
    ["checks/edge-distance", "checks/off-panel"].includes(code),
  );
  expect(rim?.remedies[0]?.title).toMatch(/^top: /);
  const mended = remedied(texts, rim!.remedies[0]!);
  expect(faults(mended).map(({ code }) => code)).not.toContain("checks/marking-off-panel");
});

test("a legend alone over the edge is given the place of its component", () => {
  const texts = panel("11 mm", "4 mm");
  const off = faults(texts).find(({ code }) => code === "checks/marking-off-panel");
  expect(off?.remedies[0]?.title).toMatch(/^top: /);
  const mended = remedied(texts, off!.remedies[0]!);
  expect(faults(mended)).toEqual([]);
});
