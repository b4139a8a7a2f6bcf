import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Outcome, runIn } from "./run-in.ts";
import { temporaryFolder } from "./temporary-folder.ts";
import { testLibrary } from "./test-library.ts";

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed   # behind the house
stock: { own-petg: { material: petg, colour: black } }
machines:
  mill: { type: printer, bed: [220, 220, 250], line: 0.45 mm, layer: 0.2 mm }
`;

const shed = (): string => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "workshop.yaml"), WORKSHOP);
  return folder;
};

const testpiece = (cwd: string, ...args: readonly string[]): Promise<Outcome> =>
  runIn(cwd, ["testpiece", "printer", "--workshop", "workshop.yaml", ...args], {
    library: testLibrary,
  });

test("a piece is written with its inspection and a page of how to measure", async () => {
  const folder = shed();
  const { code, stdout } = await testpiece(folder, "--stock", "own-petg", "--json");
  expect(code).toBe(0);
  const { files, inspection } = JSON.parse(stdout);
  expect(inspection.every(({ passed }: { passed: boolean }) => passed)).toBe(true);
  const out = join(folder, "out", "test-piece-mill-own-petg");
  for (const { path } of files) expect(existsSync(join(out, path))).toBe(true);
  expect(readFileSync(join(out, "measure.md"), "utf8")).toContain("hole-3");
});

test("readings become the printer's profile and the stock's opaque wall", async () => {
  const folder = shed();
  const read = "hole-3=2.68,peg-5=5.08,press=0.05,snug=0.15,sliding=0.2,loose=0.4,opaque=3";
  const { code, stdout } = await testpiece(folder, "--stock", "own-petg", "--read", read);
  expect(code).toBe(0);
  expect(stdout).toContain("mill has 1 rows for holes and 1 for pegs, clearances by class of fit");
  expect(readFileSync(join(folder, "workshop.yaml"), "utf8")).toBe(
    WORKSHOP.replace("colour: black }", "colour: black, opaque-from: 1.35 mm }").replace(
      "layer: 0.2 mm }",
      "layer: 0.2 mm, holes: [{ to: 3, add: 0.32 }], pegs: [{ to: 5, add: -0.08 }], clearances: { press: 0.05, snug: 0.15, sliding: 0.2, loose: 0.4 } }",
    ),
  );
});

test("an opaque wall of a stock that is not the workshop's own is told, not lost", async () => {
  const { code, stderr } = await testpiece(
    shed(),
    ...["--stock", "black-petg", "--read", "opaque=3"],
  );
  expect(code).toBe(0);
  expect(stderr).toContain("black-petg is none of the workshop's own stock");
});

test.each([
  [["--stock", "own-petg", "--read", "hole-3=2,68"], "can't be read"],
  [["--stock", "own-petg", "--read", "hole-3=26.8"], "23.8 mm out"],
  [["--stock", "opal-acrylic-3"], "is a sheet"],
  [["--stock", "no-such"], "There is no stock"],
  [["--stock", "own-petg", "--machine", "laser"], "Which printer?"],
  [[], "Which stock?"],
])("%j is wrong use, and the workshop stays as it was", async (args, said) => {
  const folder = shed();
  const { code, stderr } = await testpiece(folder, ...args);
  expect(code).toBe(2);
  expect(stderr).toContain(said);
  expect(readFileSync(join(folder, "workshop.yaml"), "utf8")).toBe(WORKSHOP);
});
