// The same design gives the same bytes in Node and in Chromium: every file of every pack, by its hash.

import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "vite";
import { afterAll, beforeAll, expect, test } from "vitest";
import { panelDesign } from "../../bench/seeded-panel.ts";
import { exampleFiles } from "../../scripts/example-files.ts";
import { firstFiles } from "../../viewer/first-files.ts";
import { WHOLE } from "../examples/example-projects.ts";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";
import { type DesignInput, packHashes } from "../support/pack-hashes.ts";
import { soundDesign } from "../support/page-designs.ts";

const root = join(import.meta.dirname, "../..");
const library: unknown = JSON.parse(readFileSync(join(root, "dist/library.json"), "utf8"));
const cache = join(root, ".cache");
/** Whole packs, papers included, twice over, in a browser that draws in software on a busy machine. */
const PATIENCE = 120_000;

let folder = "";
let stand: PageStand;

beforeAll(async () => {
  mkdirSync(cache, { recursive: true });
  folder = mkdtempSync(join(cache, "same-bytes-"));
  await build({
    configFile: false,
    logLevel: "error",
    root,
    publicDir: false,
    build: {
      outDir: folder,
      target: "es2023",
      minify: false,
      lib: { entry: join(root, "tests/support/pack-hashes.ts"), formats: ["es"], fileName: "core" },
    },
  });
  writeFileSync(join(folder, "index.html"), "<!doctype html><link rel=icon href='data:,'>");
  stand = await standOf(folder);
});

afterAll(async () => {
  await stand?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function hashesInBrowser(design: DesignInput): Promise<Readonly<Record<string, string>>> {
  const { page, complaints } = await openPage(stand);
  // As text: a function would be rewritten for the test runner, its import() with it.
  const call = `packHashes(${JSON.stringify(design)}, ${JSON.stringify(library)})`;
  const hashes = await page.evaluate<Readonly<Record<string, string>>>(
    `import("./core.js").then((core) => core.${call})`,
  );
  expect(complaints).toEqual([]);
  await page.close();
  return hashes;
}

async function compareBoth(design: DesignInput): Promise<void> {
  const here = packHashes(design, library);
  expect(Object.keys(here).length).toBeGreaterThan(5);
  expect(await hashesInBrowser(design)).toEqual(here);
}

test(
  "a small panel gives the same bytes in Node and in Chromium",
  () => compareBoth(soundDesign),
  PATIENCE,
);

test(
  "a panel of sixty components gives the same bytes in Node and in Chromium",
  () => {
    const { entry, files } = panelDesign(0, "b612");
    // The cut files alone: the papers of so large a panel take longer than all the rest, and the examples have theirs.
    return compareBoth({ entry, files: Object.fromEntries(files), whole: [] });
  },
  PATIENCE,
);

test.each(Object.entries(exampleFiles(root)))(
  "example %s gives the same bytes in Node and in Chromium",
  async (name, files) => {
    const entries = firstFiles(new Map(Object.entries(files)));
    expect(entries.length).toBeGreaterThan(0);
    // Drawings and papers of the panels that hold every kind of part: those of the others go the same ways.
    const whole = WHOLE.filter(([example]) => example === name).map(([, panel]) => panel);
    expect(whole.length).toBeGreaterThan(0);
    for (const entry of entries) await compareBoth({ entry, files, whole });
  },
  PATIENCE,
);
