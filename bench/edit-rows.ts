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
      yardstick: (round) => parseDocument(panelText(panelDesign(round, "b612"))),
      warmUp: 20,
      rounds: 40,
    }),
    heapRow(library),
  ];
}

/** Each call makes the next edit of the text and compiles it with what the last one has left. */
function editor(library: Library): () => void {
  const design = panelDesign(0, "b612");
  let text = panelText(design);
  let memory: PanelMemory = new Map();
  let count = 0;
  return () => {
    text = moved(text, count);
    count += 1;
    const files = new Map([...design.files, ["panel.yaml", text]]);
    memory = compile({ ...design, files }, library, memory).memory;
  };
}

const panelText = ({ files }: BenchDesign): string => files.get("panel.yaml") ?? "";

/** Another component each time, to the right and back. */
function moved(text: string, count: number): string {
  const line = new RegExp(`( c${(count % 60) + 1}: .*? x: )([\\d.]+)`);
  const by = Math.floor(count / 60) % 2 === 0 ? 0.05 : -0.05;
  return text.replace(line, (_all, before, x) => `${before}${(Number(x) + by).toFixed(3)}`);
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
  for (let round = 0; round < FIRST; round += 1) edits();
  const before = held();
  const started = performance.now();
  for (let round = 0; round < EDITS; round += 1) edits();
  const ms = rounded((performance.now() - started) / EDITS);
  return {
    name: `heap after ${EDITS} more edits, ${rounded(before)} MB before (target: ratio after to before is 1; time: of one edit)`,
    median_ms: ms,
    min_ms: ms,
    max_ms: ms,
    ratio: rounded(held() / before),
  };
}
