// The first paper of a pack: what it is, the picture, what is held, the cautions that apply, the order of work, the files.

import { countWords } from "../diagnostics/count-words.ts";
import { markdownText } from "../export/markdown-table.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import { cautionsFor } from "./cautions.ts";
import { fileTable } from "./file-table.ts";
import { orderOfWork } from "./order-of-work.ts";
import type { PackFile } from "./pack-file.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { paperFile } from "./paper-file.ts";
import { revisionWords } from "./revision-words.ts";

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
      fileTable(files),
      "A name with `.kerf-0.20` holds the kerf already: do not compensate again. `.nominal` leaves it to the cutter.",
      "",
    ].join("\n"),
  );
};

const factsLine = ({ design, layout }: PanelForPack): string => {
  const size = `${decimal(extentWidth(layout.nominal), 3)} x ${decimal(extentHeight(layout.nominal), 3)} mm nominal`;
  return markdownText(
    `Panel ${design.name}, ${revisionWords(design)}. ${layout.mount.title}, ${size}, ${countWords(layout.components.length, "component")}.`,
  );
};

const holdLines = ({ findings }: PanelForPack): readonly string[] => {
  const held = findings.filter(({ severity }) => severity === "query").length;
  if (held === 0) return [];
  const question = held === 1 ? "1 question is" : `${held} questions are`;
  return [`**HOLD: ${question} open.** Decide before you cut: findings.md.`, ""];
};
