// The first paper of a pack: what it is, the picture, what is held, the cautions that apply, the order of work, the files.

import { markdownTable, markdownText } from "../export/markdown-table.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import { cautionsFor } from "./cautions.ts";
import { orderOfWork } from "./order-of-work.ts";
import type { PackFile, PackFileKind } from "./pack-file.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { paperFile } from "./paper-file.ts";

export const packReadme = (panel: PanelForPack, files: readonly PackFile[]): PackFile => {
  const picture = files.find(({ kind }) => kind === "drawing-svg");
  return paperFile(
    "readme",
    "README.md",
    [
      `# ${markdownText(panel.design.title)}`,
      "",
      factsLine(panel),
      "",
      ...(picture === undefined ? [] : [`![front of the panel](${picture.path})`, ""]),
      ...holdLines(panel),
      "## Before you begin",
      "",
      ...cautionsFor(panel).map((caution) => `- ${caution}`),
      "",
      "These are the usual cautions of a workshop. Local codes, data sheets and licensed practice come first.",
      "",
      "## Order of work",
      "",
      ...orderOfWork(panel, files).map((step, index) => `${index + 1}. ${step}`),
      "",
      "## Files",
      "",
      markdownTable(
        [
          { title: "file", align: "left" },
          { title: "what it is", align: "left" },
        ],
        files.map(({ path, kind }) => [path, FILE_MEANING[kind]]),
      ),
      "A name with `.kerf-0.20` holds the kerf already: do not compensate again. `.nominal` leaves it to the cutter.",
      "",
    ].join("\n"),
  );
};

const factsLine = ({ design, layout }: PanelForPack): string => {
  const size = `${decimal(extentWidth(layout.nominal), 3)} x ${decimal(extentHeight(layout.nominal), 3)} mm nominal`;
  const dated = design.dated === null ? "" : `, dated ${design.dated}`;
  return markdownText(
    `Panel ${design.name}, revision ${design.revision}${dated}. ${layout.mount.title}, ${size}, ${layout.components.length} components.`,
  );
};

const holdLines = ({ findings }: PanelForPack): readonly string[] => {
  const held = findings.filter(({ severity }) => severity === "query").length;
  if (held === 0) return [];
  const question = held === 1 ? "1 question is" : `${held} questions are`;
  return [`**HOLD: ${question} open.** Decide before you cut: findings.md.`, ""];
};

export const FILE_MEANING: Readonly<Record<PackFileKind, string>> = {
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
