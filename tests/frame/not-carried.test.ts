// What is said of bays that a frame can't carry: values that were tried, in the unit of the text, and no others.

import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";
import { PLY_SHED } from "./ply-shed.ts";

const consoleText = (bays: readonly string[]): string =>
  `consolewright: 1\nkind: console\nname: stand\nworkshop: shed.yaml\nbays:\n${bays.map((bay) => `  ${bay}\n`).join("")}frame: { type: side-console, sheet: ply }\n`;

const faultsOf = (text: string): readonly Finding[] =>
  compile(
    {
      entry: "console.yaml",
      files: new Map([
        ["console.yaml", text],
        ["shed.yaml", PLY_SHED],
      ]),
      binaries: new Map(),
    },
    testLibrary(),
  ).findings.filter(({ severity }) => severity === "fault");

const mended = (text: string, found: Finding | undefined): string => {
  const result = applyEdits(text, found?.remedies[0]?.edits ?? []);
  if (result.kind === "refused") throw new Error(result.why);
  return result.text;
};

// Ribs reach 60 + 60 below the rails and may reach down to 60 + 11.6 + 0.5 = 72.1: 12.1 are missing. Raised by that the low bay's
// room stands in the ribs of the one over it, which reach down to 180.
test("a bay that can't rise, because another stands over it, is told no place", () => {
  const text = consoleText([
    "low: { mount: console-rail, at: [40, -400, 180], along: [1, 0, 0], length: 24 modules, depth: 60 mm }",
    "over: { mount: console-rail, at: [0, -400, 305], along: [1, 0, 0], length: 40 modules, depth: 60 mm }",
  ]);
  const found = faultsOf(text).find(({ subjects }) => subjects.includes("low"));
  expect(found?.message).toContain("12.1 mm too low. ");
  expect(found?.message).not.toContain("at: [");
  expect(found?.remedies).toEqual([]);
  // Less deep by that it keeps its place: 60 - 12.1, down to a millimetre.
  expect(found?.message).toContain("too low. depth: 47 mm does.");
  const shallow = text.replace("24 modules, depth: 60 mm", "24 modules, depth: 47 mm");
  expect(faultsOf(shallow).filter(({ code }) => code.startsWith("parts/"))).toEqual([]);
});

test("a bay written in inches is raised in inches, and nothing else of its place is touched", () => {
  const text = consoleText([
    "aft: { mount: console-rail, at: [0 in, -16 in, 7 1/3 in], along: [1, 0, 0], length: 24 modules, depth: 120 mm }",
  ]);
  const [found] = faultsOf(text);
  const after = mended(text, found);
  // 180 below 186.27 is 6.27; 72.1 is asked for: 252.1 mm is 9.9252 in.
  const [, height = ""] = /at: \[0 in, -16 in, ([\d.]+) in\]/.exec(after) ?? [];
  expect(Number(height) * 25.4).toBeGreaterThanOrEqual(252.1);
  expect(Number(height) * 25.4).toBeLessThan(252.3);
  expect(found?.message).toContain(`at: [0 in, -16 in, ${height} in] (aft) does`);
  expect(faultsOf(after)).toEqual([]);
});

// Three boards of 11.6 and two webs of 1.25 boards: 63.8 mm; 7 modules of 9.525 are 66.675.
test("a bay too short for its ribs is told how much it lacks, and a length that works", () => {
  const text = consoleText([
    "aft: { mount: console-rail, at: [0, -400, 620], along: [1, 0, 0], length: 6 modules, depth: 120 mm }",
  ]);
  const [found] = faultsOf(text);
  expect(found?.message).toBe(
    "aft is 57.15 mm long, and two ribs with their webs take 63.8 mm, 6.65 mm more. length: 7 modules does.",
  );
  expect(faultsOf(mended(text, found)).filter(({ code }) => code === "parts/frame-bay")).toEqual(
    [],
  );
});

// 24 modules are 228.6: forward begins 20 before aft ends. The way on is barred by the third, 12.8 behind it; back before aft it is
// 208.6 and 228.6.
test("bays that overlap by 20 mm are told 20 mm, however far one has to go to stand free of a third", () => {
  const at = (name: string, x: number): string =>
    `${name}: { mount: console-rail, at: [${x}, -400, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }`;
  const text = consoleText([at("aft", 0), at("forward", 208.6), at("third", 450)]);
  const [found, ...others] = faultsOf(text);
  expect(others).toEqual([]);
  expect(found?.message).toContain("want the same place: 20 mm of it, and 0 mm can be shared.");
  expect(found?.measured?.value).toBe(20);
  expect(found?.remedies[0]?.title).toContain("at: [-228.6, -400, 620]");
  expect(faultsOf(mended(text, found))).toEqual([]);
});
