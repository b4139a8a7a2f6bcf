// A console's revision and its day stand wherever a reader asks which of two papers is the newer one.

import { join } from "node:path";
import { expect, test } from "vitest";
import { compile, fitOfProject, packOfConsoleProject } from "../../src/project.ts";
import { readExample } from "../findings/example.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";

const packOf = async (lines: string) => {
  const example = join(import.meta.dirname, "../findings/checks/frame-web.yaml");
  const files = new Map(readExample(example));
  files.set("console.yaml", `${files.get("console.yaml")}\n${lines}`);
  const project = compile({ entry: "console.yaml", files }, testLibrary());
  const { console } = project;
  if (console === null) throw new Error("the example is a console");
  const fit = fitOfProject(project, console, await openKernel());
  const pack = packOfConsoleProject(
    project,
    { console, fit },
    { only: "everything", card: false, kernel: null },
  );
  const text = (path: string): string => {
    const found = pack.files.find((file) => file.path === path);
    if (found === undefined) throw new Error(`no ${path}`);
    return new TextDecoder().decode(found.bytes);
  };
  return { console, text };
};

test("papers, drawings, manifest and boards say the console's revision", async () => {
  const { console, text } = await packOf("revision: C\ndated: 2026-10-02\n");
  expect(text("README.md")).toContain("revision C, dated 2026-10-02");
  expect(text("fit-report.md")).toContain("revision C, dated 2026-10-02");
  expect(JSON.parse(text("manifest.json"))).toMatchObject({ panel: "web", revision: "C" });
  expect(console.frame?.parts.every(({ sheetPart }) => sheetPart.revision === "C")).toBe(true);
  // Words of a drawing are outlines: it is another drawing once the revision is another, and the same else.
  const plan = "drawings/web-plan.svg";
  expect((await packOf("revision: C\ndated: 2026-10-02\n")).text(plan)).toBe(text(plan));
  expect((await packOf("revision: D\ndated: 2026-10-02\n")).text(plan)).not.toBe(text(plan));
  expect((await packOf("revision: C\n")).text(plan)).not.toBe(text(plan));
});

test("a console that says nothing is revision A, of no date", async () => {
  const { text } = await packOf("");
  expect(text("README.md")).toContain("revision A:");
  expect(text("README.md")).not.toContain("dated");
});
