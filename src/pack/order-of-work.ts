// The steps that turn a pack into a panel, in order, each naming its file: measure, decide, card, cut, paint, put together.

import { markdownText } from "../export/markdown-table.ts";
import type { SetUp, SheetPart } from "../parts/sheet-part.ts";
import { setUpName } from "./cut-files.ts";
import type { PackFile } from "./pack-file.ts";
import type { PanelForPack } from "./panel-pack.ts";

export const orderOfWork = (panel: PanelForPack, files: readonly PackFile[]): readonly string[] => {
  const has = (path: string): boolean => files.some((file) => file.path === path);
  const hasFolder = (folder: string): boolean =>
    files.some(({ path }) => path.startsWith(`${folder}/`));
  return [
    ...(has("measuring-list.md")
      ? ["Measure what measuring-list.md asks for, enter it in the design and make the pack again."]
      : []),
    ...(has("findings.md") ? ["Decide every HOLD of findings.md."] : []),
    ...(hasFolder("template")
      ? [
          "Print a template at actual size (100 %), measure its 100 mm bars both ways, and lay the real parts on it.",
        ]
      : []),
    ...(hasFolder("card")
      ? ["Cut the files of card/ from cardboard and drop the real parts in."]
      : []),
    ...[...panel.sheetParts, ...panel.fitted.sheets].flatMap(partSteps),
    ...(hasFolder("film")
      ? [
          "Print the files of film/ on clear film at actual size (100 %), and cut along their lines.",
        ]
      : []),
    ...(has("assembly.md")
      ? [
          "Put it together by assembly.md, nuts hand-tight first; try every lever and knob before the last turn.",
        ]
      : []),
    "Try the panel in its place before anything is wired.",
  ];
};

const partSteps = (part: SheetPart): readonly string[] => [
  ...part.setUps.map((setUp) => setUpStep(part, setUp)),
  ...(part.handOperations.length === 0
    ? []
    : [`${markdownText(part.title)}: do the hand operations of hand-operations.md.`]),
];

const setUpStep = (part: SheetPart, setUp: SetUp): string => {
  const where = `${part.stock.id} on ${setUp.machine.id}, ${setUp.faceUp === "front" ? "FRONT up" : "REAR up"}`;
  const words = [`${part.title}: cut/${setUpName(part, setUp)}, ${where}.`, ...setUp.instructions];
  return markdownText(words.join(" "));
};
