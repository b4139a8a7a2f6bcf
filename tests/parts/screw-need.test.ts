// Lengths of screws by hand: what they run through at its thickest, and what they end in. Heads and nuts by their standards.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { isLampBoxPart } from "../../src/parts/printed/lamp-box-facts.ts";
import { isTrimPart } from "../../src/parts/printed/trim-facts.ts";
import {
  lidScrewNeed,
  mountGrip,
  screwFor,
  soldScrews,
  stackScrewNeed,
  trimScrewNeed,
} from "../../src/parts/screw-need.ts";
import { compile, type PanelProject } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const root = join(import.meta.dirname, "../../examples/tug-trainer");
const library = testLibrary();

const trainerPanel = (name: string, change = (text: string): string => text): PanelProject => {
  const shared = ["workshop.yaml", "measured-parts.yaml", "own-parts.yaml"].map(
    (file) => [file, readFileSync(join(root, file), "utf8")] as const,
  );
  const entry = `panels/${name}.yaml`;
  const text = change(readFileSync(join(root, entry), "utf8"));
  const [panel] = compile({ entry, files: new Map([...shared, [entry, text]]) }, library).panels;
  if (panel?.layout == null) throw new Error(name);
  return panel;
};

const lengthFor = (need: Parameters<typeof screwFor>[0]): number | undefined =>
  screwFor(need, soldScrews(need.thread, library.catalogue))?.length;

test("screws of a stack end in the tray's inserts: every layer in front, and one diameter", () => {
  const { layout, printedParts } = trainerPanel("echo-sounder");
  const need = stackScrewNeed(layout!, printedParts, library.catalogue)!;
  // Opal 2.86 and paint on its front 0.08, aluminium 1.98, spacer 14: 18.92; M3 bites 3 (ISO 261).
  expect(need).toMatchObject({ ends: "insert", owner: "tray", thread: "m3" });
  expect(need.least).toBeCloseTo(18.92 + 3, 6);
  expect(lengthFor(need)).toBe(25);
});

test("and in nuts where nothing is printed behind: nut of 2.4 (ISO 4032) and 1 mm of thread", () => {
  const { layout, printedParts } = trainerPanel("tow-release", (text) =>
    text.replace(/ {2}- \{ layer: spacer.*\n/, ""),
  );
  const need = stackScrewNeed(layout!, printedParts, library.catalogue)!;
  expect(need.ends).toBe("nut");
  expect(need.least).toBeCloseTo(2.86 + 0.08 + 1.98 + 2.4 + 1, 6);
  expect(lengthFor(need)).toBe(10);
});

test("a lamp box's lid is held through its thickness, two millimetres into M2 inserts", () => {
  const { printedParts } = trainerPanel("alarms");
  const box = printedParts.find(isLampBoxPart)!;
  const need = lidScrewNeed(box)!;
  expect(need.least).toBeCloseTo(box.lampBox.lid.thickness + 2, 6);
  expect(lengthFor(need)).toBe(4);
});

test("a trim's screws run through the sheet that its display is clamped to", () => {
  const { layout, printedParts } = trainerPanel("echo-sounder", (text) =>
    text.replace(
      "trim: { filter: smoke-acrylic-2 }",
      "trim: { filter: smoke-acrylic-2, fixing: screw }",
    ),
  );
  const trim = printedParts.find(isTrimPart)!;
  const need = trimScrewNeed(trim, layout!)!;
  // Aluminium of 1.98, and one diameter of thread.
  expect(need.least).toBeCloseTo(1.98 + 2, 6);
  expect(need.most).toBeCloseTo(1.98 + (trim.trim.fit.screwDepth ?? 0), 6);
  expect(lengthFor(need)).toBeLessThanOrEqual(need.most ?? 0);
});

test("studs hold the metal alone: the acrylic before it opens for their heads", () => {
  const { layout } = trainerPanel("echo-sounder");
  expect(mountGrip(layout!).high).toBeCloseTo(1.98, 6);
});
