// The table of a pack's README: each of its files, and what it is.

import { markdownTable } from "../export/markdown-table.ts";
import type { PackFile, PackFileKind } from "./pack-file.ts";

export const fileTable = (files: readonly PackFile[]): string =>
  markdownTable(
    [
      { title: "file", align: "left" },
      { title: "what it is", align: "left" },
    ],
    files.map(({ path, kind }) => [path, FILE_MEANING[kind]]),
  );

const FILE_MEANING: Readonly<Record<PackFileKind, string>> = {
  "cut-svg": "cut file, SVG in mm",
  "cut-dxf": "cut file, DXF in mm",
  "cut-dxf-r12": "cut file, DXF R12 for older programs",
  "print-3mf": "print file, 3MF in mm",
  "print-stl": "print file, STL (a STL has no unit: it is mm)",
  "print-step": "solid with true arcs, STEP",
  "picture-png": "picture of a printed part",
  "label-film": "label film in true size, for clear film",
  "template-pdf": "paper template in true size",
  "drawing-svg": "drawing for the screen",
  "drawing-pdf": "drawing for the printer",
  key: "which colour means which work",
  inspection: "the cut files measured",
  "measuring-list": "what to measure first",
  "parts-list": "what to buy and to make",
  "hand-operations": "what hands do with tools",
  assembly: "how it goes together, step by step",
  "fit-report": "fit of every panel in its console",
  "console-model": "model of the whole console, glTF in metres",
  "mock-up": "panels and boards in true size, for a mock-up in card",
  readme: "this page",
  findings: "open questions and notes",
  manifest: "every file with its hash",
};
