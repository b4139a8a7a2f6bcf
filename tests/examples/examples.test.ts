// Every example as it stands in the repository: no fault, cut files and print files measured, and some whole packs that are
// the same on every run. Drawings and papers of all of them take too long for every run.

import { beforeAll, describe, expect, test } from "vitest";
import { projectFiles } from "../../src/design/project-files.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { printFilesOf } from "../../src/pack/print-files.ts";
import type { PanelProject } from "../../src/project.ts";
import { openKernel } from "../support/kernel.ts";
import { EXAMPLE_NAMES, exampleProject, packOf, WHOLE } from "./example-projects.ts";

/** 3/8 in: MIL-F-25173A. */
const MODULE = 9.525;

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

/** The arranged panel says what is still to be measured; the others have been. */
const UNMEASURED = ["first-panel"];

/** Compiled once, and once more: nothing that the second makes can have been kept by the first. */
const FIRST = new Map(EXAMPLE_NAMES.map((name) => [name, exampleProject(name)]));
const SECOND = new Map(EXAMPLE_NAMES.map((name) => [name, exampleProject(name)]));

/** Whole packs, made and read back twice: seconds each. */
const TWICE = { timeout: 300_000 };

test("the examples are these three", () => {
  expect(EXAMPLE_NAMES).toEqual(["first-panel", "rack-panel", "tug-trainer"]);
});

test.each(EXAMPLE_NAMES)("%s has no fault, and no query but what is to be measured", (name) => {
  const project = FIRST.get(name)!;
  const findings = [...project.findings, ...project.panels.flatMap((panel) => panel.findings)];
  const open = findings.filter(({ severity }) => severity !== "note");
  expect(open.filter(({ severity }) => severity === "fault")).toEqual([]);
  expect([...new Set(open.map(({ code }) => code))]).toEqual(
    UNMEASURED.includes(name) ? ["checks/unmeasured-part"] : [],
  );
});

describe.each(EXAMPLE_NAMES)("%s", (name) => {
  const project = FIRST.get(name)!;

  test.each(project.panels.map((panel) => [panel.name, panel] as const))(
    "%s: every row of the inspection of its cut files and print files passes",
    (_, panel) => {
      const { pack } = packOf(project, panel, { only: "fascia" });
      const printed = panel.printedParts.map((part) => printFilesOf(part, kernel));
      expect(pack.findings).toEqual([]);
      expect(pack.inspection.length).toBeGreaterThan(50);
      for (const { files, inspection } of printed) {
        expect(files.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["print-3mf"]));
        expect(inspection.length).toBeGreaterThan(0);
      }
      const rows = [...pack.inspection, ...printed.flatMap(({ inspection }) => inspection)];
      expect(rows.filter(({ passed }) => !passed)).toEqual([]);
    },
  );
});

test("the whole packs hold every printed role of the examples", () => {
  const rolesOf = (panels: readonly PanelProject[]): readonly string[] =>
    panels.flatMap(({ printedParts }) => printedParts.map(({ role }) => role));
  const all = EXAMPLE_NAMES.flatMap((name) => FIRST.get(name)!.panels);
  const whole = all.filter(({ name }) => WHOLE.some(([, panel]) => panel === name));
  expect(whole).toHaveLength(WHOLE.length);
  expect([...new Set(rolesOf(whole))].sort()).toEqual([...new Set(rolesOf(all))].sort());
});

test.each(WHOLE)("%s, %s: its whole pack is the same when it is made again", TWICE, (name, id) => {
  const [first, second] = [FIRST, SECOND].map((projects) => {
    const project = projects.get(name)!;
    const panel = project.panels.find((each) => each.name === id);
    if (panel === undefined) throw new Error(`${name} has no panel ${id}`);
    return packOf(project, panel, { only: "everything", kernel }).pack;
  });
  expect(first?.findings).toEqual([]);
  expect(first?.files.at(-1)?.kind).toBe("manifest");
  expect(second?.files.map(({ path }) => path)).toEqual(first?.files.map(({ path }) => path));
  const changed = first?.files.filter(
    ({ bytes }, file) => !Buffer.from(bytes).equals(Buffer.from(second?.files[file]?.bytes ?? [])),
  );
  expect(changed?.map(({ path }) => path)).toEqual([]);
});

/** Modules of each bay, and of the panels on it, in order. */
test("the trainer's panels fill its two bays", () => {
  const project = FIRST.get("tug-trainer")!;
  const { console: design } = projectFiles("console.yaml", project.files);
  const lengths = Object.values(design?.bays ?? {}).map(({ id, length }) => [
    id,
    length.kind === "pitches" ? length.count : length.mm / MODULE,
    (design?.panels ?? [])
      .filter(({ bay }) => bay === id)
      .map(({ as }) => project.panels.find(({ name }) => name === as)?.layout?.nominal.maxY ?? 0)
      .reduce((sum: number, height) => sum + height / MODULE, 0),
  ]);
  expect(lengths).toEqual([
    ["aft", 60, expect.closeTo(60, 6)],
    ["forward", 40, expect.closeTo(40, 6)],
  ]);
});
