// The key beside the cut files: which colour and layer is which process, in the order of work, as plain text.
// Takes the colours in use; gives lines that a person reads and a search finds.

import type { Process } from "../parts/sheet-part.ts";
import { LAYER_COLOURS } from "./dxf-layers.ts";
import { DEFAULT_COLOURS, type ProcessColours } from "./process-colours.ts";
import { PROCESS_ORDER } from "./process-order.ts";

const WHAT: Readonly<Record<Process, string>> = {
  witness: "the word FRONT in the waste, before anything is loose",
  engrave: "areas to fill and lines to follow, into paint or material",
  score: "lines to scratch, not to cut",
  drill: "holes to drill",
  "cut-inner": "openings, the smallest first",
  "cut-outer": "the outline, last: after it the part is loose",
};

/** Names of the default colours (Okabe and Ito 2008). */
const COLOUR_NAMES: Readonly<Record<string, string>> = {
  [DEFAULT_COLOURS.engrave]: "black",
  [DEFAULT_COLOURS.score]: "bluish green",
  [DEFAULT_COLOURS["cut-inner"]]: "blue",
  [DEFAULT_COLOURS["cut-outer"]]: "vermillion",
  [DEFAULT_COLOURS.witness]: "reddish purple",
  [DEFAULT_COLOURS.drill]: "orange",
};

export const colourKey = (colours: ProcessColours): string => {
  const rows = PROCESS_ORDER.map((process, index) => [
    String(index + 1),
    process,
    colours[process],
    COLOUR_NAMES[colours[process]] ?? "your own",
    String(LAYER_COLOURS[process]),
    WHAT[process],
  ]);
  const heading = ["order", "group/layer", "colour", "name", "R12 colour", "what it is"];
  return [
    "Colours of the cut files, in the order of work.",
    "Map each to a setting of your machine; the same names are layers in the DXF files.",
    "",
    ...alignedLines([heading, ...rows]),
    "",
  ].join("\n");
};

const alignedLines = (rows: readonly (readonly string[])[]): readonly string[] => {
  const columns = rows[0]?.length ?? 0;
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.max(...rows.map((row) => row[column]?.length ?? 0)),
  );
  return rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd(),
  );
};
