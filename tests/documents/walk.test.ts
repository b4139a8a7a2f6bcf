// DEVELOPERS.md shows one design on its way through every floor: what stands there is what the program gives. When it is
// meant to change: npx tsx tests/documents/walk.ts, and paste. The picture of the floors names every folder of the source.

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { walk } from "./walk.ts";

const ROOT = dirname(dirname(import.meta.dirname));
const document = readFileSync(join(ROOT, "DEVELOPERS.md"), "utf8");

test("the walk through the floors is what the program gives", () => {
  const shown = /<!-- walk -->\n```text\n([\s\S]*?)\n```\n<!-- \/walk -->/.exec(document)?.[1];
  expect(shown).toBe(walk());
});

test("the picture of the floors names every floor that there is", () => {
  const picture = /## The floors[\s\S]*?```\n([\s\S]*?)```/.exec(document)?.[1] ?? "";
  const named = new Set(picture.match(/[a-z.]+/g));
  const floors = readdirSync(join(ROOT, "src")).filter((name) => name !== "tsconfig.json");
  expect(floors.length).toBeGreaterThan(10);
  expect(floors.filter((name) => !named.has(name) && isKept(name))).toEqual([]);
});

/** An empty folder is no floor: version control does not keep it. */
const isKept = (name: string): boolean =>
  name.endsWith(".ts") || readdirSync(join(ROOT, "src", name)).length > 0;

test("the files that it speaks of are there", () => {
  const paths = [...document.matchAll(/`((?:src|tests|scripts)\/[\w./-]+|[a-z]+\/[a-z/-]+\.ts)`/g)];
  const missing = paths
    .map(([, path]) => path ?? "")
    .filter((path) => !(isThere(path) || isThere(`src/${path}`)));
  expect(paths.length).toBeGreaterThan(10);
  expect(missing).toEqual([]);
});

const isThere = (path: string): boolean => {
  const folder = join(ROOT, dirname(path));
  const name = path.split("/").at(-1) ?? "";
  try {
    return name === "" || readdirSync(folder).includes(name);
  } catch {
    return false;
  }
};
