// Edits of a panel one after the other, each compiled with the memory of the one before, as the page does it in its worker: what
// one takes, and whether anything is left behind by hundreds of them.

import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { parseDocument } from "yaml";
import { compile, type Library, type PanelMemory } from "../src/project.ts";
import { measured, type Row, rounded } from "./harness.ts";
import { type BenchDesign, panelDesign } from "./seeded-panel.ts";

export function editRows(library: Library): readonly Row[] {
  const edits = editor(library);
  return [
    measured({
      name: "an edit of a panel of 60 components and 120 markings, compiled again (yardstick: its YAML parsed)",
      run: edits,
      yardstick: (round) => parseDocument(edited(round).files.get("panel.yaml") ?? ""),
      warmUp: 20,
      rounds: 40,
    }),
    heapRow(library),
  ];
}

/** Each call compiles the next edit with what the last one has left. */
function editor(library: Library): (round: number) => void {
  let memory: PanelMemory = new Map();
  return (round) => {
    memory = compile(edited(round), library, memory).memory;
  };
}

/** Another component moves each time. */
function edited(round: number): BenchDesign {
  const design = panelDesign(0, "b612");
  const name = `c${(round % 60) + 1}`;
  const text = design.files.get("panel.yaml") ?? "";
  const line = new RegExp(`( ${name}: .*? x: )([\\d.]+)`);
  const moved = text.replace(
    line,
    (_all, before, x) => `${before}${(Number(x) + (1 + (round % 7)) / 100).toFixed(3)}`,
  );
  return { ...design, files: new Map([...design.files, ["panel.yaml", moved]]) };
}

const FIRST = 60;
const EDITS = 500;

function heapRow(library: Library): Row {
  setFlagsFromString("--expose-gc");
  const collect: () => void = runInNewContext("gc");
  const edits = editor(library);
  const held = (): number => {
    collect();
    return process.memoryUsage().heapUsed / 1e6;
  };
  for (let round = 0; round < FIRST; round += 1) edits(round);
  const before = held();
  const started = performance.now();
  for (let round = 0; round < EDITS; round += 1) edits(FIRST + round);
  const ms = rounded((performance.now() - started) / EDITS);
  return {
    name: `heap after ${EDITS} more edits, ${rounded(before)} MB before (target: ratio after to before is 1; time: of one edit)`,
    median_ms: ms,
    min_ms: ms,
    max_ms: ms,
    ratio: rounded(held() / before),
  };
}
