// The foot of a sheet, below everything that is drawn: what is held, notes, tables, and the title block last.

import type { Finding } from "../diagnostics/finding.ts";
import { type Extent, extentWidth, joinedExtent } from "../geometry/extent.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import { holdBlock } from "./sheet-notes.ts";
import { type Block, type Column, type Hang, noteBlock, tableBlock } from "./text-blocks.ts";
import { type SheetName, titleBlock } from "./title-block.ts";

/** Narrower feet would wrap every line of the title block; wider ones are hard to read. */
const LEAST_WIDTH = 160;
const MOST_WIDTH = 200;
const GAP = 4;

export interface FootParts {
  readonly sheet: SheetName;
  /** What is drawn: the foot hangs under it. */
  readonly above: Extent;
  readonly findings: readonly Finding[];
  readonly notes: readonly string[];
  readonly table?: {
    readonly columns: readonly Column[];
    readonly rows: readonly (readonly string[])[];
  };
}

export const sheetFoot = (face: Face | null, layout: PanelLayout, parts: FootParts): Block => {
  const width = Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, extentWidth(parts.above)));
  const blocks: Block[] = [];
  const add = (make: (hang: Hang) => Block | null): void => {
    const top = (blocks.at(-1)?.box.minY ?? parts.above.minY) - GAP;
    const made = make({ left: parts.above.minX, top, width });
    if (made !== null) blocks.push(made);
  };
  const { table, notes } = parts;
  if (table !== undefined) add((hang) => tableBlock(face, table, hang));
  add((hang) => holdBlock(face, parts.findings, hang));
  if (notes.length > 0)
    add((hang) => noteBlock(face, { heading: "Notes", entries: notes, ink: "dimension" }, hang));
  add((hang) => titleBlock(face, layout, { sheet: parts.sheet, hang }));
  return {
    items: blocks.flatMap(({ items }) => items),
    box: blocks.map(({ box }) => box).reduce(joinedExtent),
  };
};
