// What `fit --fix` writes, on consoles that must not fit: their files say on their own lines what is found there.

import { cpSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { type Outcome, runIn } from "./run-in.ts";
import { temporaryFolder } from "./temporary-folder.ts";
import { testLibrary } from "./test-library.ts";

const EXAMPLE = join(dirname(dirname(import.meta.dirname)), "examples", "tug-trainer");

const laid = (): string => {
  const folder = temporaryFolder();
  for (const part of ["workshop.yaml", "measured-parts.yaml", "panels", "variants"])
    cpSync(join(EXAMPLE, part), join(folder, part), { recursive: true });
  return folder;
};

const fitted = (cwd: string, ...args: readonly string[]): Promise<Outcome> =>
  runIn(cwd, ["fit", ...args], { library: testLibrary });

test.each([
  ["shallow-bay", "depth: 66 mm"],
  ["one-module-too-many", "length: 14 modules"],
])("%s fits once its remedy is written", async (variant, remedy) => {
  const folder = laid();
  const file = `variants/${variant}.yaml`;
  // That it does not fit as it stands is shown with the other variants; here it is told by what was fixed.
  const { code, stdout, stderr } = await fitted(folder, file, "--fix");
  expect(stderr).toContain(`fixed: ${remedy}`);
  expect([code, stdout]).toEqual([0, expect.stringContaining("no faults")]);
  expect(readFileSync(join(folder, file), "utf8")).toContain(remedy);
});

test("a fault without a remedy that mends it leaves the files as they are", async () => {
  const folder = laid();
  const file = "variants/one-within-another.yaml";
  const before = readFileSync(join(folder, file), "utf8");
  expect((await fitted(folder, file, "--fix")).code).toBe(1);
  expect(readFileSync(join(folder, file), "utf8")).toBe(before);
});
