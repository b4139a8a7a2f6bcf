// The first paper of a console's pack: what it is, its plan, what is held, the cautions that apply, the order of work, the files.

import { countWords } from "../diagnostics/count-words.ts";
import { markdownText } from "../export/markdown-table.ts";
import { consoleCautions } from "./console-cautions.ts";
import type { ConsoleForPack } from "./console-pack.ts";
import { fileTable } from "./file-table.ts";
import type { PackFile } from "./pack-file.ts";
import { paperFile } from "./paper-file.ts";
import { revisionWords } from "./revision-words.ts";

export const consoleReadme = (input: ConsoleForPack, files: readonly PackFile[]): PackFile => {
  const { layout } = input;
  const plan = files.find(({ kind }) => kind === "drawing-svg");
  return paperFile(
    "readme",
    "README.md",
    [
      `# ${markdownText(layout.design.title)}`,
      "",
      markdownText(
        `Console ${layout.name}, ${revisionWords(layout.design)}: ${countWords(layout.bays.length, "bay")}, ${countWords(layout.panels.length, "panel")}. Each panel has a pack of its own.`,
      ),
      "",
      ...(plan === undefined ? [] : [`![plan of the console](${plan.path})`, ""]),
      ...holdLines(input),
      "## Before you begin",
      "",
      ...consoleCautions(input).map((caution) => `- ${caution}`),
      "",
      "These are the usual cautions. Local codes, data sheets and licensed practice come first.",
      "",
      "## Order of work",
      "",
      ...orderOfWork(files).map((step, index) => `${index + 1}. ${step}`),
      "",
      "## Files",
      "",
      fileTable(files),
      "console.glb is in metres, y up; drawings and cut files are in millimetres.",
      "",
    ].join("\n"),
  );
};

const holdLines = ({ findings }: ConsoleForPack): readonly string[] => {
  const held = findings.filter(({ severity }) => severity === "query").length;
  if (held === 0) return [];
  const question = held === 1 ? "1 question is" : `${held} questions are`;
  return [`**HOLD: ${question} open.** Decide before you cut: fit-report.md.`, ""];
};

const orderOfWork = (files: readonly PackFile[]): readonly string[] => {
  const has = (path: string): boolean => files.some((file) => file.path === path);
  const isCut = files.some(({ path }) => path.startsWith("cut/"));
  return [
    ...(has("fit-report.md")
      ? ["Read fit-report.md: decide every query, and look at what was not asked."]
      : []),
    ...(has("mock-up.pdf")
      ? [
          "Print mock-up.pdf at actual size (100 %), measure its 100 mm bars both ways, join the pages on card, and sit before it: reach every control, read every legend.",
        ]
      : []),
    "Make the panels, each from its own pack.",
    ...(isCut
      ? [
          "Cut one joint of the frame in waste and try it; then cut the boards of cut/, and mark each with its number.",
          "Put the frame together by frame-assembly.md, dry first.",
          "Fix the frame where it will stand, so that it can't tip.",
        ]
      : [
          "Make the console's frame, or measure the one that is there against the drawings, and fix it so that it can't tip.",
        ]),
    "Drop every panel in once, without wires, in the order of the report, and lift each out again as it says.",
    "Only then wire, and leave the service loops that the report asks for.",
  ];
};
