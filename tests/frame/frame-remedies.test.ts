// Remedies of a frame that edit its text, where the examples of the findings show another case: applied, they clear their
// finding and bring no fault. Nothing outside can say more of it than that.

import { join } from "node:path";
import { expect, test } from "vitest";
import { findingsOf, readExample, type Texts } from "../findings/example.ts";
import { faultsOf, isSame, remedied } from "../findings/remedied.ts";

const CONSOLE = "console.yaml";

const changed = (example: string, changes: readonly (readonly [string, string])[]): Texts => {
  const texts = new Map(
    readExample(join(import.meta.dirname, `../findings/checks/${example}.yaml`)),
  );
  for (const [from, to] of changes) {
    const text = texts.get(CONSOLE) ?? "";
    if (!text.includes(from)) throw new Error(`${example} does not say ${from}`);
    texts.set(CONSOLE, text.replace(from, to));
  }
  return texts;
};

test.each([
  [
    // Ends take 2 (0.5 + 11.6 + 11.3) = 46.8 and 275.37 - 228.6 = 46.77 are there: to a tenth less.
    "checks/frame-sections",
    "beyond: 11.2 mm",
    changed("frame-sections", [
      ["at: [240,", "at: [275.37,"],
      ["sheet: ply }", "sheet: ply, beyond: 11.3 mm }"],
    ]),
  ],
  [
    // From the first bay's beginning, 300, to half a millimetre behind the second's ribs, 560 + 150 + 60, less 15 of cheek, a board
    // of 11.6, half a millimetre on each side of it and the 40 that the floor takes: 402.9.
    "checks/frame-knees",
    "knees: [402.9, 500]",
    changed("frame-knees", [["knees: [300, 620]", "knees: [500, 500]"]]),
  ],
  [
    // The right unit has two bays, and both move: 200 from middle to middle, and each unit takes 211.2.
    "checks/frame-units",
    "at: [0, -111.2, 620] (right), at: [260, -111.2, 620] (ahead)",
    changed("frame-units", [
      [
        "frame: {",
        "  ahead: { mount: console-rail, at: [260, -100, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }\nframe: {",
      ],
    ]),
  ],
  [
    // A group that is written, without the key.
    "checks/frame-ribs",
    "spacing: 47 mm",
    changed("frame-ribs", [["spacing: 10 mm", "spacing: 10 mm, web: 50 mm"]]),
  ],
])("%s goes with %s", (code, title, texts) => {
  const before = findingsOf(texts);
  const found = before.find((each) => each.code === code);
  const remedy = found?.remedies.find((each) => each.title === title);
  expect(found?.remedies.map((each) => each.title)).toEqual([title]);
  const after = findingsOf(remedied(texts, remedy!));
  expect(after.filter((each) => isSame(found!, each))).toEqual([]);
  expect(faultsOf(after).filter((fault) => !faultsOf(before).includes(fault))).toEqual([]);
});
