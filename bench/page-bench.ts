// `npm run bench:page`: what the built page fetches before its first panel; the console's picture in the tests' browser, drawn
// by software, beside a bare scene of the same triangles, in turns; an edit and a step of a drag. Needs `npm run build`.
// Folders after `--` are other builds of the page: an edit in each of them is timed too, in turns.

import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Browser } from "playwright-core";
import { build } from "vite";
import { exampleFiles } from "../scripts/example-files.ts";
import { consoleBodies } from "../src/fit/bodies/console-bodies.ts";
import { compile, openLibrary } from "../src/project.ts";
import { type FetchedFile, firstLoad, packedKilobytes } from "../tests/support/first-load.ts";
import { openPage, type PageStand, standOf } from "../tests/support/open-page.ts";
import type { ConsoleScene } from "../viewer/console/console-messages.ts";
import { consoleScene } from "../viewer/console/console-scene.ts";
import { rounded } from "./harness.ts";
import { type EditedLine, type EditTime, editTimes } from "./page-edits.ts";

const root = dirname(import.meta.dirname);
const ROUNDS = 7;
const STEPS = 24;
const EDITS = 60;

await load();
await edits();
const stand = await standOf("dist/viewer");
await firstPicture(stand.browser);
await dragSteps();
await stand.close();

async function load(): Promise<void> {
  const folder = "dist/viewer";
  const own = await standOf(folder);
  const { milliseconds, code, data } = await firstLoad(own, folder);
  await own.close();
  const sizes = (files: readonly FetchedFile[]): string =>
    files.map(({ path, packedBytes }) => `${path} ${rounded(packedBytes / 1000)}`).join(", ");
  tell(
    `from the address to the first panel of the demo, a browser that has nothing yet: ${rounded(packedKilobytes(code))} kB packed (target: under 450: ${sizes(code)}) and ${sizes(data)}`,
    milliseconds,
    null,
  );
}

/** Where builds are compared each comes twice, in turns: what the machine does meanwhile falls on all of them. */
async function edits(): Promise<void> {
  const folders = ["dist/viewer", ...process.argv.slice(2)];
  for (const folder of folders.length === 1 ? folders : [...folders, ...folders]) {
    for (const line of ["as long as before", "longer and shorter in turn"] as const) {
      const own = await standOf(folder);
      await tellEdits(folder, own, line);
      await own.close();
    }
  }
}

async function tellEdits(folder: string, of: PageStand, line: EditedLine): Promise<void> {
  const { page, bare } = await editTimes(of, EDITS, line);
  const times = page.map(({ ms }) => ms);
  const spread = `best ${rounded(Math.min(...times))}, worst ${rounded(Math.max(...times))} ms`;
  tell(
    `${folder}: an edit of a panel of 60 components to findings and picture, its line ${line}, ${EDITS} of them, ${spread}${processorWords(page)} (target: under 50 ms; yardstick: a text to a worker and back and a shape moved, ${rounded(median(bare))} ms)`,
    median(times),
    median(times) / median(bare),
  );
}

/** What of it was work, and how long the threads stood in line behind other programs in the slowest: the machine's share. */
function processorWords(page: readonly EditTime[]): string {
  const slowest = page.toSorted((a, b) => b.ms - a.ms)[0]?.processor ?? null;
  const counted = page.flatMap(({ processor }) => processor ?? []);
  if (slowest === null) return "";
  const [worker, own] = [
    median(counted.map(({ worker: ms }) => ms)),
    median(counted.map(({ page: ms }) => ms)),
  ];
  return `, of the processor ${rounded(worker)} ms in the worker and ${rounded(own)} ms in the page; in the worst its threads waited ${rounded(slowest.waited)} ms for one`;
}

async function firstPicture(browser: Browser): Promise<void> {
  const folder = mkdtempSync(join(root, ".cache/page-bench-"));
  await build({
    configFile: false,
    logLevel: "warn",
    publicDir: false,
    build: {
      outDir: folder,
      target: "es2023",
      lib: {
        entry: join(import.meta.dirname, "page/first-picture.ts"),
        formats: ["es"],
        fileName: "bench",
      },
    },
  });
  const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  await page.addScriptTag({
    content: readFileSync(join(folder, "bench.js"), "utf8"),
    type: "module",
  });
  rmSync(folder, { recursive: true });
  await page.waitForFunction(() => "bench" in window);
  const times = await page.evaluate(
    async ([text, rounds]) => {
      const scene: ConsoleScene = JSON.parse(text, (_key, value) =>
        value?.floats !== undefined
          ? Float32Array.from(value.floats)
          : value?.wholes !== undefined
            ? Uint32Array.from(value.wholes)
            : value,
      );
      const found: { page: number[]; bare: number[] } = { page: [], bare: [] };
      for (let round = 0; round <= rounds; round += 1)
        for (const kind of ["page", "bare"] as const) {
          const time = await window.bench[kind](scene);
          // The first of each warms the browser up.
          if (round > 0) found[kind].push(time);
        }
      return found;
    },
    [sceneText(), ROUNDS] as const,
  );
  const [mine, bare] = [median(times.page), median(times.bare)];
  tell(
    "first picture of the tug trainer (yardstick: a bare scene of its triangles and lines)",
    mine,
    mine / bare,
  );
  await page.close();
}

/** Typed arrays as lists under a name: the way to the browser is text. */
function sceneText(): string {
  const library = openLibrary(JSON.parse(readFileSync(join(root, "dist/library.json"), "utf8")));
  const files = new Map(Object.entries(exampleFiles(root)["tug-trainer"] ?? {}));
  const project = compile({ entry: "console.yaml", files }, library);
  if (project.console === null) throw new Error("the tug trainer has no console");
  const { layout, frame } = project.console;
  const printedParts = new Map(project.panels.map((panel) => [panel.name, panel.printedParts]));
  const bodies = consoleBodies({ layout, frame, printedParts });
  const { scene } = consoleScene(layout, bodies, { sent: new Map(), trueShape: () => null });
  const triangles = scene.groups
    .flatMap(({ lots }) => lots ?? [])
    .reduce((sum, lot) => sum + lot.triangles.length / 3, 0);
  console.log(`${bodies.length} bodies, ${triangles} triangles`);
  return JSON.stringify(scene, (_key, value) => {
    if (value instanceof Float32Array) return { floats: [...value] };
    if (value instanceof Uint32Array) return { wholes: [...value] };
    return value;
  });
}

/** By keys, in the built page: each step says itself what it took in the worker. */
async function dragSteps(): Promise<void> {
  const { page } = await openPage(stand);
  await page.goto(`${stand.server.address}?picture=plain`);
  await page.getByLabel("Example").selectOption("tug-trainer");
  await page.getByRole("button", { name: "Console", exact: true }).click();
  await page.getByRole("button", { name: /^Voyage recorder / }).click();
  await page.getByRole("radio", { name: "Move panels" }).check();
  const row = page.getByRole("button", { name: /^Voyage recorder / });
  const times: number[] = [];
  for (let step = 0; step < STEPS + 6; step += 1) {
    // Down into its neighbour by three modules, and up again.
    await row.press(step % 6 < 3 ? "ArrowDown" : "ArrowUp");
    await page.waitForTimeout(150);
    const took = await page.locator(".dragged").getAttribute("data-milliseconds");
    if (step >= 6) times.push(Number(took));
  }
  tell(
    `a step of a drag, ${STEPS} of them (worst ${rounded(Math.max(...times))} ms)`,
    median(times),
    null,
  );
}

function tell(name: string, ms: number, ratio: number | null): void {
  const words = ratio === null ? "" : `  ratio ${ratio.toFixed(2)}`;
  console.log(`${ms.toFixed(1).padStart(9)} ms${words}  ${name}`);
}

function median(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
