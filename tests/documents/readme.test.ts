// The READMEs are run: every command in them, in order, in a folder of the test's, and what follows a command is what it
// says. `...` stands for any words; a line of it for any lines. `npm ci` and `npm test` are excepted by name.

import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { COMMANDS } from "../../src/cli/command-list.ts";
import { runDocument } from "./document-runner.ts";
import { blocksOf, says } from "./markdown-blocks.ts";

const ROOT = dirname(dirname(import.meta.dirname));
const textOf = (path: string): string => readFileSync(join(ROOT, path), "utf8");

let folder = "";

beforeAll(() => {
  mkdirSync(join(ROOT, ".cache"), { recursive: true });
  folder = mkdtempSync(join(ROOT, ".cache/readme-"));
  cpSync(join(ROOT, "examples"), join(folder, "examples"), { recursive: true });
  // As its README says, the first panel begins without its panel file.
  cpSync(join(ROOT, "examples/first-panel"), join(folder, "first-panel"), { recursive: true });
  rmSync(join(folder, "first-panel/panel.yaml"));
  mkdirSync(join(folder, "node_modules"));
  symlinkSync(ROOT, join(folder, "node_modules/consolewright"));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const DOCUMENTS = [
  { path: "README.md", place: ".", panel: "pump/panel.yaml", shows: 13 },
  { path: "examples/first-panel/README.md", place: "first-panel", panel: "panel.yaml", shows: 4 },
  {
    path: "examples/rack-panel/README.md",
    place: "examples/rack-panel",
    panel: "panel.yaml",
    shows: 1,
  },
  { path: "examples/tug-trainer/README.md", place: "examples/tug-trainer", panel: "-", shows: 3 },
] as const;

/** A whole console is fitted, made and read back. */
const MINUTES = { timeout: 300_000 };

test.each(DOCUMENTS)("$path: its commands say what it shows", MINUTES, async (document) => {
  const { path, place, panel, shows } = document;
  const texts = await runDocument(textOf(path), { folder: join(folder, place), panel });
  expect(texts.length).toBe(shows);
  for (const { shown, said } of texts)
    expect(says(said, shown), `${path} shows:\n${shown}\n\nIt says:\n${said}`).toBe(true);
});

test.each(DOCUMENTS)("$path: every file that it names is there", ({ path }) => {
  const text = textOf(path);
  const paths = [...text.matchAll(/\]\(([^)#]+)\)|src="([^"]+)"/g)].map(
    ([, link, source]) => link ?? source ?? "",
  );
  const local = paths.filter((each) => !each.startsWith("http"));
  expect(local.length).toBeGreaterThan(0);
  for (const each of local)
    expect(() => readFileSync(join(ROOT, dirname(path), each)), each).not.toThrow();
});

test("the README's list is the example's", () => {
  const list = blocksOf(textOf("README.md")).find(({ language }) => language === "csv");
  expect(`${list?.text}\n`).toBe(textOf("examples/first-panel/list.csv"));
});

test("the README's table of commands is the program's", () => {
  const rows = [...textOf("README.md").matchAll(/^\| `([a-z]+)` \| (.+) \|$/gm)];
  expect(rows.map(([, name, about]) => [name, about])).toEqual(
    COMMANDS.map(({ name, summary }) => [name, summary]),
  );
});

describe("a shown text", () => {
  const SAID = "one: 3 files in out/, 20 measurements right\nnothing else { ... }.\nlast\n";
  test.each([
    ["one: ... files in out/, ... measurements right\n...\nlast", true],
    ["one: 3 files in out/, 20 measurements right\nnothing else { ... }.\nlast", true],
    ["...\nlast", true],
    ["one: ... files in out/, ... measurements right\nlast", false],
    ["...\nnothing else { !!! }.\nlast", false],
    ["...\nlas", false],
  ])("%j is found: %s", (shown, isFound) => {
    expect(says(SAID, shown)).toBe(isFound);
  });
});
