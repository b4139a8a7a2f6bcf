import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Outcome, runIn } from "./run-in.ts";
import { temporaryFolder } from "./temporary-folder.ts";
import { testLibrary } from "./test-library.ts";

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed   # behind the house
machines:
  laser: { type: co2-laser, bed: [600, 400], spot: 0.15 mm, kerf: in-file }
`;

const shed = (text = WORKSHOP): string => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "workshop.yaml"), text);
  return folder;
};

const STOCK = ["--workshop", "workshop.yaml", "--stock", "opal-acrylic-3"];

const testpiece = (cwd: string, ...args: readonly string[]): Promise<Outcome> =>
  runIn(cwd, ["testpiece", "laser", ...args], { library: testLibrary });

test("a piece is written with its inspection and a page of how to measure", async () => {
  const folder = shed();
  const { code, stdout } = await testpiece(folder, ...STOCK, "--json");
  expect(code).toBe(0);
  const { files, inspection } = JSON.parse(stdout);
  expect(inspection.every(({ passed }: { passed: boolean }) => passed)).toBe(true);
  const out = join(folder, "out", "test-piece-opal-acrylic-3");
  for (const { path } of files) expect(existsSync(join(out, path))).toBe(true);
  expect(readFileSync(join(out, "measure.md"), "utf8")).toContain("square-x");
});

// A piece comes out smaller by the kerf and an opening larger: 20 - 19.79 = 3.21 - 3 = 0.21 across x.
test("readings become the kerf of that stock, per axis; a later reading takes the earlier one's place", async () => {
  const folder = shed();
  const place = join(folder, "workshop.yaml");
  const readings = "square-x=19.79,slot-x=3.21,square-y=19.81,slot-y=3.19";
  const first = await testpiece(folder, ...STOCK, "--read", readings, "--dated", "2026-01-31");
  expect(first.code).toBe(0);
  expect(readFileSync(place, "utf8")).toBe(
    WORKSHOP.replace(
      "kerf: in-file }",
      "kerf: in-file, measured: [{ stock: opal-acrylic-3, kerf: [0.21, 0.19], hole-allowance: 0, dated: 2026-01-31 }] }",
    ),
  );
  await testpiece(
    folder,
    ...STOCK,
    "--read",
    readings.replace("19.79", "19.77"),
    "--dated",
    "2026-02-28",
  );
  const text = readFileSync(place, "utf8");
  expect(text).toContain("kerf: [0.22, 0.19]");
  expect(text).not.toContain("2026-01-31");
  const other = ["--workshop", "workshop.yaml", "--stock", "black-acrylic-3"];
  await testpiece(folder, ...other, "--read", readings, "--dated", "2026-03-01");
  expect(readFileSync(place, "utf8").match(/stock:/g)).toHaveLength(2);
});

test("readings also go into a list that is written line by line", async () => {
  const folder = shed(
    `${WORKSHOP.replace("kerf: in-file }", "kerf: in-file }").replace(
      "  laser: { type: co2-laser, bed: [600, 400], spot: 0.15 mm, kerf: in-file }",
      "  laser:\n    type: co2-laser\n    bed: [600, 400]\n    spot: 0.15 mm\n    kerf: in-file\n    measured:\n      - { stock: card-1-5, kerf: 0.15, dated: 2025-01-01 }",
    )}`,
  );
  await testpiece(
    folder,
    ...STOCK,
    "--read",
    "square-x=19.8,square-y=19.8",
    "--dated",
    "2026-01-31",
  );
  expect(readFileSync(join(folder, "workshop.yaml"), "utf8")).toMatch(
    / {6}- \{ stock: card-1-5.*\n {6}- \{ stock: opal-acrylic-3, kerf: \[0\.2, 0\.2\]/,
  );
});

test.each([
  [["--stock", "unobtainium"], "no stock"],
  [[], "--stock"],
  [["--stock", "opal-acrylic-3", "--machine", "saw"], "no laser"],
  [["--stock", "opal-acrylic-3", "--read", "square-x=19.8", "--dated", "2026-01-31"], "--workshop"],
  [[...STOCK, "--read", "square-x=19.8,square-y=19.8"], "--dated"],
  [[...STOCK, "--read", "square-x", "--dated", "2026-01-31"], "can't be read"],
  [[...STOCK, "--read", "square-x=19.8", "--dated", "2026-01-31"], "y has no reading"],
  [[...STOCK, "--read", "square-x=12,square-y=19.8", "--dated", "2026-01-31"], "would be a kerf"],
])("%j is wrong use and nothing is written", async (args, hint) => {
  const folder = shed();
  const { code, stderr } = await testpiece(folder, ...args);
  expect(code).toBe(2);
  expect(stderr).toContain(hint);
  expect(readFileSync(join(folder, "workshop.yaml"), "utf8")).toBe(WORKSHOP);
  expect(existsSync(join(folder, "out"))).toBe(false);
});
