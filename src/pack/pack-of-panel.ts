// A panel's pack: every file with its name and bytes, in order, with the inspection of what will be cut.
// The same panel gives the same bytes on every run. A fault among its findings means that it must not be written.

import { spanOf } from "../design/written.ts";
import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { processColours } from "../export/process-colours.ts";
import type { SheetPart } from "../parts/sheet-part.ts";
import { assemblyPaper } from "./assembly-paper.ts";
import { cardParts } from "./card-parts.ts";
import { REFUSED_COLOUR } from "./codes.ts";
import { colourKey } from "./colour-key.ts";
import { cutFilesTogether } from "./cut-files.ts";
import { drawingFiles } from "./drawing-files.ts";
import { findingsPaper } from "./findings-paper.ts";
import { fittedFiles } from "./fitted-files.ts";
import { handOperationsPaper } from "./hand-operations.ts";
import { inspectionPapers } from "./inspection-papers.ts";
import { manifestFile, manifestOf } from "./manifest.ts";
import { measuringListPaper } from "./measuring-list.ts";
import type { PackFile } from "./pack-file.ts";
import { packReadme } from "./pack-readme.ts";
import type { PackOptions, PanelForPack, PanelPack } from "./panel-pack.ts";
import { partHash } from "./part-hash.ts";
import { partsListPapers } from "./parts-list.ts";
import { type PrintFiles, printFilesOf } from "./print-files.ts";
import { printMismatches } from "./print-mismatches.ts";

export const packOfPanel = (panel: PanelForPack, options: PackOptions): PanelPack => {
  const cut = cutFilesIn("cut", panel, panel.sheetParts);
  const card = cutFilesIn("card", panel, options.card ? cardParts(panel) : []);
  const print = printFiles(panel, options);
  const fitted = fittedFiles(panel);
  const inspection = [
    ...cut.inspection,
    ...card.inspection,
    ...fitted.inspection,
    ...print.inspection,
  ];
  const cutFiles = [...cut.files, ...card.files, ...fitted.files];
  const files = [
    ...cutFiles,
    ...(cutFiles.length === 0 ? [] : [colourKey(panel.colours)]),
    ...print.files,
    ...inspectionPapers(inspection),
    ...(options.only === "fascia" ? [] : papers(panel)),
  ];
  const withReadme = options.only === "fascia" ? files : [packReadme(panel, files), ...files];
  const manifest = manifestOf(
    panel.design,
    withReadme,
    [...panel.sheetParts, ...panel.fitted.sheets].map(partHash),
  );
  return {
    files: [...withReadme, manifestFile(manifest)],
    inspection,
    findings: [
      ...refusedColours(panel),
      ...cut.findings,
      ...card.findings,
      ...fitted.findings,
      ...printMismatches(print.inspection, panel),
    ],
  };
};

const refusedColours = ({ design, colours }: PanelForPack): readonly Finding[] =>
  processColours(colours).refused.map(({ process, colour, why }) =>
    finding(REFUSED_COLOUR, {
      panel: design.name,
      subjects: [process],
      message: `process-colours, ${process}: ${colour} ${why}.`,
      span: spanOf(design.written, "workshop"),
    }),
  );

/** None for the fascia alone, and none where nobody opened the solid kernel. */
const printFiles = (panel: PanelForPack, options: PackOptions): PrintFiles => {
  const kernel = options.kernel ?? null;
  if (kernel === null || options.only === "fascia") return { files: [], inspection: [] };
  const parts = panel.printedParts.map((part) => printFilesOf(part, kernel));
  return {
    files: parts.flatMap(({ files }) => files),
    inspection: parts.flatMap(({ inspection }) => inspection),
  };
};

const papers = (panel: PanelForPack): readonly PackFile[] => {
  const byHand = handOperationsPaper(panel.sheetParts);
  const together = assemblyPaper(panel);
  return [
    ...drawingFiles(panel),
    measuringListPaper(panel),
    ...partsListPapers(panel),
    ...(byHand === null ? [] : [byHand]),
    ...(together === null ? [] : [together]),
    findingsPaper(panel.findings, panel.texts),
  ];
};

const cutFilesIn = (
  folder: "cut" | "card",
  panel: PanelForPack,
  parts: readonly SheetPart[],
): PanelPack =>
  cutFilesTogether(parts, {
    folder,
    colours: panel.colours,
    titleOf: ({ title }) => (folder === "card" ? `Card test: ${title}` : title),
    spanOf: (part) => layerSpan(panel, part.layer),
  });

const layerSpan = ({ design }: PanelForPack, layer: string): Span =>
  design.stack.find(({ id }) => id === layer)?.written.span ?? design.written.span;
