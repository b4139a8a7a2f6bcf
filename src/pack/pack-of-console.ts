// A console's pack: every file with its name and bytes, in order, with the inspection of what will be cut and of the model.
// The same console gives the same bytes on every run. A fault among its findings means that it must not be written.

import type { ConsoleSheet } from "../drawings/console-drawing.ts";
import { reportCsv } from "../export/report-csv.ts";
import { reportHtml } from "../export/report-html.ts";
import { reportJson } from "../export/report-json.ts";
import { reportMarkdown } from "../export/report-markdown.ts";
import { svgDrawing } from "../export/svg-drawing.ts";
import { colourKey } from "./colour-key.ts";
import {
  consoleDrawingFiles,
  consoleDrawingPaths,
  consoleDrawings,
} from "./console-drawing-files.ts";
import { type ConsoleModel, consoleModel } from "./console-model.ts";
import type { ConsoleForPack } from "./console-pack.ts";
import { consoleReadme } from "./console-readme.ts";
import { cutFilesTogether } from "./cut-files.ts";
import { FIT_REPORT_FORMAT, fitReport } from "./fit-report.ts";
import { frameDrawings } from "./frame-drawings.ts";
import { framePapers } from "./frame-papers.ts";
import { inspectionPapers } from "./inspection-papers.ts";
import { manifestFile, manifestOf } from "./manifest.ts";
import type { PackFile } from "./pack-file.ts";
import type { PackOptions, PanelPack } from "./panel-pack.ts";
import { paperFile } from "./paper-file.ts";
import { partHash } from "./part-hash.ts";
import { printMismatches } from "./print-mismatches.ts";

/**
 * `only: "fascia"`: the frame's cut files, their key and inspection; no file at all without a frame. `card` changes nothing
 * here: slots of the frame are as wide as its boards are thick, and what is tried in card is in mock-up.pdf. Without a kernel
 * there is no console.glb.
 */
export const packOfConsole = (input: ConsoleForPack, options: PackOptions): PanelPack => {
  const cut = frameCutFiles(input);
  const model = modelOf(input, options);
  const inspection = [...cut.inspection, ...model.inspection];
  if (options.only === "fascia" && cut.files.length === 0)
    return { files: [], inspection, findings: cut.findings };
  const files = [
    ...cut.files,
    ...(cut.files.length === 0 ? [] : [colourKey(input.colours)]),
    ...model.files,
    ...(inspection.length === 0 ? [] : inspectionPapers(inspection)),
    ...(options.only === "fascia" ? [] : papers(input)),
  ];
  const all = options.only === "fascia" ? files : [consoleReadme(input, files), ...files];
  const parts = (input.frame?.parts ?? []).map(({ sheetPart }) => partHash(sheetPart));
  const manifest = manifestOf(
    { name: input.layout.name, revision: input.layout.design.revision },
    all,
    parts,
  );
  return {
    files: [...all, manifestFile(manifest)],
    inspection,
    findings: [...cut.findings, ...printMismatches(model.inspection, input.layout)],
  };
};

/** All of a frame lies at the frame's own place in the text. */
const frameCutFiles = ({ layout, frame, colours }: ConsoleForPack): PanelPack => {
  const span = layout.design.frame?.written.span ?? layout.design.written.span;
  return cutFilesTogether(
    (frame?.parts ?? []).map(({ sheetPart }) => sheetPart),
    { folder: "cut", colours, titleOf: ({ title }) => title, spanOf: () => span },
  );
};

const modelOf = (input: ConsoleForPack, { kernel, only }: PackOptions): ConsoleModel =>
  kernel === null || kernel === undefined || only === "fascia"
    ? { files: [], inspection: [] }
    : consoleModel(input, kernel);

const papers = (input: ConsoleForPack): readonly PackFile[] => {
  const sheets = consoleDrawings(input);
  const ofFrame = frameDrawings(input);
  const all = [...sheets, ...ofFrame];
  const paths = consoleDrawingPaths(input, all);
  const pictures = new Map(
    ofFrame.flatMap(({ step }, index) =>
      step === null ? [] : [[step, paths[sheets.length + index] ?? ""] as const],
    ),
  );
  return [
    ...consoleDrawingFiles(input, all),
    ...fitReportFiles(input, sheets),
    ...(input.frame === null ? [] : framePapers(input.frame, pictures)),
  ];
};

const fitReportFiles = (
  input: ConsoleForPack,
  sheets: readonly ConsoleSheet[],
): readonly PackFile[] => {
  const report = fitReport(input);
  const plan = sheets.find(({ id }) => id === "plan");
  const picture = plan === undefined ? null : svgDrawing(plan.drawing);
  const file = (ending: string, text: string): PackFile =>
    paperFile("fit-report", `fit-report.${ending}`, text);
  return [
    file("md", reportMarkdown(report)),
    file("html", reportHtml(report, picture)),
    file("json", reportJson(report, FIT_REPORT_FORMAT)),
    file("csv", reportCsv(report)),
  ];
};
