// Panels that want the same stretch of a bay are told of once: what their bodies then do to one another is no cause of its own.

import { join } from "node:path";
import { expect, test } from "vitest";
import { compile, fitOfProject } from "../../src/project.ts";
import { readExample } from "../findings/example.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";

const kernel = await openKernel();

test("two panels in one place neither clash nor hold each other in", () => {
  const example = readExample(join(import.meta.dirname, "../findings/fit/panels-overlap.yaml"));
  const files = new Map([...example].map(([file, text]) => [file, deeper(text)]));
  const project = compile({ entry: "console.yaml", files }, testLibrary());
  if (project.console === null) throw new Error("the example is a console");
  const { facts, findings } = fitOfProject(project, project.console, kernel);
  expect(facts.lifts.map(({ way }) => way)).toEqual([null, null]);
  expect(project.findings.map(({ code }) => code)).toContain("fit/panels-overlap");
  const codes = findings.filter(({ severity }) => severity !== "note").map(({ code }) => code);
  expect(codes).toEqual([]);
});

/** Half of each panel lies in the other, and each carries a lever. */
function deeper(text: string): string {
  return text.replace("module: 5", "module: 3").replace("part: led-5", "part: toggle-12");
}
