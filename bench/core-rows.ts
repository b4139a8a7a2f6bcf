// The core's rows: reading and judging panels, writing their cut files. Each stands beside a yardstick: what the
// libraries underneath, or the language itself, need for the same amount of work.

import { deflateSync } from "node:zlib";
import { parseDocument } from "yaml";
import { dxfCutFile } from "../src/export/dxf-cut-file.ts";
import { processColours } from "../src/export/process-colours.ts";
import { svgCutFile } from "../src/export/svg-cut-file.ts";
import {
  compile,
  type Library,
  type PackFile,
  type Project,
  packOfProject,
} from "../src/project.ts";
import { measured, type Row } from "./harness.ts";
import { type BenchDesign, type BenchFont, consoleDesign, panelDesign } from "./seeded-panel.ts";

export function coreRows(library: Library): readonly Row[] {
  return [
    onePanel(library),
    cutFiles(library, "single-line"),
    cutFiles(library, "b612"),
    wholePack(library),
  ];
}

/** Every round reads a text that was not read before; library and workshop are as they were. */
const onePanel = (library: Library): Row =>
  measured({
    name: "compile one panel of 60 components and 120 markings (yardstick: its YAML parsed)",
    run: (round) => compile(panelDesign(round, "b612"), library),
    yardstick: (round) => parsed(panelDesign(round, "b612")),
    warmUp: 5,
    rounds: 15,
  });

export const consoleRow = (library: Library, count: number, rounds: number): Row =>
  measured({
    name: `compile a console of ${count} panels (yardstick: their YAML parsed)`,
    run: (round) => compile(consoleDesign(count, round), library),
    yardstick: (round) => parsed(consoleDesign(count, round)),
    warmUp: 1,
    rounds,
  });

function cutFiles(library: Library, font: BenchFont): Row {
  const project = compile(panelDesign(0, font), library);
  const numbers = cutTexts(project).flatMap((text) => text.match(/-?\d+\.\d+/g) ?? []);
  const values = numbers.map(Number);
  const legends = font === "b612" ? "legends as outlines" : "single-line legends";
  return measured({
    name: `SVG and DXF of one panel, ${legends} (yardstick: their numbers written)`,
    run: () => cutTexts(project),
    yardstick: () => values.map((value) => value.toFixed(6)).join(" "),
    warmUp: 5,
    rounds: 15,
  });
}

function cutTexts(project: Project): readonly string[] {
  const { colours } = processColours({});
  return project.panels
    .flatMap((panel) => panel.sheetParts)
    .flatMap((part) =>
      part.setUps.flatMap((setUp) => {
        const options = { colours, title: part.title };
        return [svgCutFile(part, setUp, options), dxfCutFile(part, setUp, options)];
      }),
    );
}

/** Everything that `make` writes for a panel; each round a panel whose texts were not seen before. */
function wholePack(library: Library): Row {
  const files = packFiles(library, 0);
  return measured({
    name: "job pack of one panel: compiled, cut files inspected, drawings, papers (yardstick: its files deflated)",
    run: (round) => packFiles(library, round),
    yardstick: () => files.map(({ bytes }) => deflateSync(bytes).length),
    warmUp: 1,
    rounds: 5,
  });
}

const packFiles = (library: Library, round: number): readonly PackFile[] => {
  const project = compile(panelDesign(round, "b612"), library);
  return project.panels.flatMap(
    (panel) => packOfProject(project, panel, { only: "everything", card: false }).files,
  );
};

const parsed = ({ files }: BenchDesign): readonly unknown[] =>
  [...files.values()].map((text) => parseDocument(text, { schema: "failsafe" }));
