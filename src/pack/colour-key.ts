// Which colour of a cut file means which work: the key that lies beside the files.

import { markdownTable } from "../export/markdown-table.ts";
import type { ProcessColours } from "../export/process-colours.ts";
import { PROCESS_ORDER } from "../export/process-order.ts";
import type { Process } from "../parts/sheet-part.ts";
import type { PackFile } from "./pack-file.ts";
import { paperFile } from "./paper-file.ts";

const MEANING: Readonly<Record<Process, string>> = {
  witness: "the FRONT mark in the waste: mark it, do not cut it",
  engrave: "fill, or run along, at the engraving setting",
  score: "run along once, lightly",
  drill: "drill, or cut as a circle",
  "cut-inner": "cut through; before the outline",
  "cut-outer": "cut through; last, the piece is then free",
};

export const colourKey = (colours: ProcessColours): PackFile =>
  paperFile(
    "key",
    "cut/colour-key.md",
    [
      "# Colour key",
      "",
      "In the order of work. The DXF files have a layer of the same name for each.",
      "",
      markdownTable(
        [
          { title: "colour", align: "left" },
          { title: "process", align: "left" },
          { title: "what to do", align: "left" },
        ],
        PROCESS_ORDER.map((process) => [colours[process], process, MEANING[process]]),
      ),
    ].join("\n"),
  );
