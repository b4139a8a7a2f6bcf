// `npm run bench`: a table for people, with targets; `npm run bench -- --json`: the rows alone, for programs.
// Needs the build (`npm run build`). Seeded: the same panels on every machine.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { compile, type Library, openLibrary } from "../src/project.ts";
import { commandRows } from "./command-rows.ts";
import { consoleRows } from "./console-rows.ts";
import { consoleRow, coreRows } from "./core-rows.ts";
import { editRows } from "./edit-rows.ts";
import { fitRows } from "./fit-rows.ts";
import { growthExponent, type Row, rounded } from "./harness.ts";
import { printRows } from "./print-rows.ts";
import { consoleDesign, panelDesign } from "./seeded-panel.ts";
import { spacerRows } from "./spacer-rows.ts";

const file = join(import.meta.dirname, "../dist/library.json");
const library = openLibrary(JSON.parse(readFileSync(file, "utf8")));

const sound = soundOrStop(library);
const rows = [
  ...coreRows(library),
  ...editRows(library),
  ...growthRows(library),
  heapRow(library),
  ...(await printRows(library)),
  ...(await spacerRows(library)),
  ...(await fitRows(library)),
  ...(await consoleRows(library)),
  ...commandRows(),
];
if (process.argv.includes("--json")) console.log(JSON.stringify(rows, null, 2));
else printTable(rows);

/** A panel that is refused would be measured as quick work. */
function soundOrStop(opened: Library): string {
  const project = compile(panelDesign(0, "b612"), opened);
  const [panel] = project.panels;
  const faults = [...project.findings, ...(panel?.findings ?? [])].filter(
    ({ severity }) => severity === "fault",
  );
  const components = panel?.layout?.components.length ?? 0;
  const markings = panel?.layout?.markings.length ?? 0;
  if (faults.length > 0 || components !== 60 || markings !== 120) {
    const why = faults.map(({ message }) => message).join("\n");
    throw new Error(`the bench panel is not sound: ${components}, ${markings}\n${why}`);
  }
  return `${components} components, ${markings} markings`;
}

function growthRows(opened: Library): readonly Row[] {
  const twelve = consoleRow(opened, 12, 7);
  const forty = consoleRow(opened, 40, 5);
  const many = consoleRow(opened, 120, 3);
  const exponent = growthExponent([
    { size: 12, ms: twelve.median_ms },
    { size: 40, ms: forty.median_ms },
    { size: 120, ms: many.median_ms },
  ]);
  const growth = { ...many, name: "growth from 12 to 120 panels (ratio: the exponent)" };
  return [twelve, forty, many, { ...growth, ratio: exponent }];
}

/** Heap that a compiled console of 120 panels holds, beside that of one panel. */
function heapRow(opened: Library): Row & { readonly heap_mb: number } {
  setFlagsFromString("--expose-gc");
  const collect: () => void = runInNewContext("gc");
  const started = performance.now();
  const one = heldBy(collect, () => compile(panelDesign(1, "b612"), opened));
  const many = heldBy(collect, () => compile(consoleDesign(120, 1), opened));
  const ms = rounded(performance.now() - started);
  return {
    name: `heap held by 120 panels (ratio: to one panel's, ${one} MB)`,
    median_ms: ms,
    min_ms: ms,
    max_ms: ms,
    ratio: rounded(many / one),
    heap_mb: many,
  };
}

function heldBy(collect: () => void, work: () => unknown): number {
  collect();
  const before = process.memoryUsage().heapUsed;
  const held = [work()];
  collect();
  const after = process.memoryUsage().heapUsed;
  return held.length === 0 ? 0 : rounded((after - before) / 1e6);
}

function printTable(all: readonly Row[]): void {
  console.log(`Bench panel: ${sound}. Milliseconds; ratio of the medians to the yardstick.\n`);
  for (const { name, median_ms, min_ms, max_ms, ratio } of all) {
    const spread = `(${min_ms.toFixed(1)} to ${max_ms.toFixed(1)})`.padEnd(22);
    const figures = `${median_ms.toFixed(1).padStart(9)}  ${spread}${ratio.toFixed(2).padStart(8)}`;
    console.log(`${figures}  ${name}`);
  }
}
