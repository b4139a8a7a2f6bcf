// A pack of a frame of two units: each board by its own name and number in every paper, and the two put together at the end.

import { join } from "node:path";
import { expect, test } from "vitest";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import { compile, fitOfProject, packOfConsoleProject } from "../../src/project.ts";
import { readExample } from "../findings/example.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";

const files = readExample(join(import.meta.dirname, "../findings/checks/frame-hatch.yaml"));
const project = compile({ entry: "console.yaml", files }, testLibrary());
const { console } = project;
if (console?.frame === null || console === null) throw new Error("the example has a frame");
const { frame, layout } = console;
const fit = fitOfProject(project, console, await openKernel());
const pack = packOfConsoleProject(
  project,
  { console, fit },
  { only: "everything", card: false, kernel: null },
);
const paths = pack.files.map(({ path }) => path);
const text = (path: string): string => {
  const found = pack.files.find((file) => file.path === path);
  if (found === undefined) throw new Error(`no ${path}`);
  return new TextDecoder().decode(found.bytes);
};

test("has a cut file of its own for each board of each unit", () => {
  expect(new Set(paths).size).toBe(paths.length);
  for (const { id } of frame.parts)
    expect(
      paths.filter((path) => path.includes(`/abreast-${id}-1-cut`) && path.endsWith(".svg")),
    ).toHaveLength(1);
  expect(pack.inspection.filter(({ passed }) => !passed)).toEqual([]);
});

test("lists the units and every board once", () => {
  const page = text("frame-parts.md");
  expect(page).toContain("- unit 1: left\n- unit 2: right");
  for (const { number, title } of frame.parts)
    expect(page).toMatch(new RegExp(`\\| +${number} \\| ${title} `));
  const rows = text("frame-parts.csv").trim().split(/\r?\n/).slice(1);
  expect(rows.map((row) => row.split(",")[1])).toEqual(frame.parts.map(({ id }) => id));
});

// 220 from middle to middle, and each takes 211.2: the example says how.
test("puts each unit together by itself, then bolts the two", () => {
  const steps = text("frame-assembly.md")
    .split("\n")
    .filter((line) => /^\d+\. /.test(line));
  const units = steps.map((line) => /^\d+\. Unit (\d): /.exec(line)?.[1] ?? "both");
  expect(units).toEqual(["1", "1", "1", "1", "1", "2", "2", "2", "2", "2", "both"]);
  expect(steps.at(-1)).toContain("spacers 8.8 mm long");
  expect(paths.filter((path) => /frame-step-\d+\.svg$/.test(path))).toHaveLength(10);
});

test("stands every board in the console as a body of its own", () => {
  const bodies = consoleBodies({ layout, frame, printedParts: new Map() });
  expect(bodies.map(({ id }) => id)).toEqual(frame.parts.map(({ id }) => id));
  // Cheeks that stand beside one another are no matter of the fit: the frame is judged for itself.
  expect(fit.findings.filter(({ severity }) => severity !== "note")).toEqual([]);
});
