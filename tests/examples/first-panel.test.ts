// The first panel's way: the panel file is what `arrange` makes of the list, and the measured parts leave nothing open.

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { compileExample } from "../../scripts/example-pictures.ts";
import { type RunSettings, runIn } from "../cli/run-in.ts";
import { testLibrary } from "../support/test-library.ts";
import { exampleTexts, inRoot } from "./example-projects.ts";

const FOLDER = "examples/first-panel";

/** As the example's README says, but printed instead of written. */
const ARRANGE = "arrange list.csv --name first-panel --workshop workshop.yaml".split(" ");

test("panel.yaml is what arrange writes, to the byte", async () => {
  const words = [...ARRANGE, "--title", "Pump and valves"];
  const library: NonNullable<RunSettings["library"]> = () => Promise.resolve(testLibrary());
  const { code, stdout } = await runIn(inRoot(FOLDER), words, { library });
  expect(code).toBe(0);
  expect(stdout).toBe(readFileSync(inRoot(`${FOLDER}/panel.yaml`), "utf8"));
});

const HEAD = "workshop: workshop.yaml\n";

test("with the measured parts named, nothing is left to decide", () => {
  const texts = exampleTexts("first-panel");
  const panel = texts["panel.yaml"] ?? "";
  const named = panel.replace(HEAD, `${HEAD}catalogue: [measured-parts.yaml]\n`);
  expect(named).not.toBe(panel);
  const project = compileExample({ ...texts, "panel.yaml": named }, testLibrary());
  expect(project.findings).toEqual([]);
  expect(project.panels.flatMap(({ findings }) => findings)).toEqual([]);
});
