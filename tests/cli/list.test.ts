import { expect, test } from "vitest";
import { runIn } from "./run-in.ts";
import { testLibrary } from "./test-library.ts";

const list = (...args: readonly string[]): ReturnType<typeof runIn> =>
  runIn(import.meta.dirname, ["list", ...args], { library: testLibrary });

test("everything is listed once, by kind and id", async () => {
  const { code, stdout, stderr } = await list("--json");
  expect([code, stderr]).toEqual([0, ""]);
  const lines = stdout
    .trimEnd()
    .split("\n")
    .map((line): { kind: string; id: string; record: object } => JSON.parse(line));
  const names = lines.map(({ kind, id }) => `${kind} ${id}`);
  expect(new Set(names).size).toBe(names.length);
  for (const wanted of ["mount console-rail", "mount rack-19", "stock opal-acrylic-3", "font b612"])
    expect(names.some((name) => name.startsWith(wanted))).toBe(true);
  expect(lines.filter(({ kind }) => kind === "part").length).toBeGreaterThanOrEqual(35);
});

test("words narrow the list down, all of them", async () => {
  const { stdout } = await list("stock", "acrylic");
  const lines = stdout.trimEnd().split("\n");
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) expect(line).toMatch(/^stock .*acrylic/);
});

test("a word that finds nothing is said so", async () => {
  const { code, stdout, stderr } = await list("unobtainium");
  expect([code, stdout]).toEqual([0, ""]);
  expect(stderr).toContain("unobtainium");
});

test("a stock is named once where its colour is its material, and has no thickness of nothing", async () => {
  const { stdout } = await list("stock");
  expect(stdout).toMatch(/aluminium-2 +aluminium, 2 mm\n/);
  expect(stdout).toMatch(/black-petg +black petg, of any depth\n/);
  expect(stdout).not.toContain(" 0 mm");
});
