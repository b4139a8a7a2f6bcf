// The printed parts of a panel, from the same components, layers and fixings as its sheets. One kind of part a file; to
// add a kind, add its line to the list here.

import type { PanelLayout } from "../../layout/panel-layout.ts";
import { angledBoxesOf } from "./angled-boxes.ts";
import { lampBoxesOf } from "./lamp-boxes.ts";
import type { PrintedContext, PrintedMaker } from "./printed-context.ts";
import type { PrintedParts } from "./printed-part.ts";
import { spacersOf } from "./spacers.ts";
import { traysOf } from "./trays.ts";
import { trimsOf } from "./trims.ts";
import { washersOf } from "./washers.ts";

const MAKERS: readonly PrintedMaker[] = [
  spacersOf,
  trimsOf,
  lampBoxesOf,
  angledBoxesOf,
  traysOf,
  washersOf,
];

export const printedPartsOf = (layout: PanelLayout, context: PrintedContext): PrintedParts => {
  const made = MAKERS.map((maker) => maker(layout, context));
  return {
    parts: made.flatMap(({ parts }) => parts),
    findings: made.flatMap(({ findings }) => findings),
  };
};
