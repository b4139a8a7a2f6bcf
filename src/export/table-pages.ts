// A table of plain words on as many pages as it needs. Takes columns, rows and the paper; gives pages.
// Words that don't fit their column run on to further lines; only what is longer than a line of prose is cut, and says so.

import type { DrawingItem } from "../drawings/drawing.ts";
import { segment, stroked } from "../drawings/items.ts";
import { words, wrapped } from "../drawings/words.ts";
import { point } from "../geometry/contour.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import type { Face } from "../lettering/face.ts";
import { PAPERS, type PaperName } from "./paper.ts";
import type { PdfPage } from "./pdf.ts";
import { plainText } from "./plain-text.ts";

export interface TableColumn {
  readonly title: string;
  /** Share of the table's width. */
  readonly share: number;
}

export interface PaperTable {
  readonly heading: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly string[])[];
  /** Lines of words under the table. */
  readonly notes: readonly string[];
}

const MARGIN = 17;
const CELL_HEIGHT = mm(2);
const HEADING_HEIGHT = mm(3);
/** From one line to the next within a row, and what a row adds between its rule and its words. */
const LINE_PITCH = 3.6;
const ROW_PAD = 2.4;
const GUTTER = 2;
const RULE = mm(0.1);

/** Lines of words in their columns; a note is a block with one column. */
interface Block {
  readonly cells: readonly { readonly lines: readonly string[]; readonly x: number }[];
  readonly height: number;
  readonly hasRule: boolean;
}

export const tablePages = (
  table: PaperTable,
  options: { readonly paper: PaperName; readonly face: Face },
): readonly PdfPage[] => {
  const { width, height } = PAPERS[options.paper];
  const room = width - 2 * MARGIN;
  const heading = rowBlock(
    table,
    table.columns.map((column) => column.title),
    { ...options, room },
  );
  const blocks = [
    ...table.rows.map((row) => rowBlock(table, row, { ...options, room })),
    ...table.notes.map((note) => noteBlock(note, { ...options, room })),
  ];
  const top = height - MARGIN - HEADING_HEIGHT - ROW_PAD;
  const pages = splitBlocks(blocks, top - heading.height - MARGIN);
  return pages.map((page, index) => ({
    width,
    height,
    sheets: [
      {
        items: [
          ...headingItems(table, options.face, { height, count: pages.length, index }),
          ...blockItems([heading, ...page], options.face, { top, width }),
        ],
        shift: { x: 0, y: 0 },
        clip: null,
      },
    ],
  }));
};

interface RowRoom {
  readonly face: Face;
  readonly room: number;
}

const rowBlock = (table: PaperTable, row: readonly string[], { face, room }: RowRoom): Block => {
  let x = MARGIN;
  const cells = table.columns.map((column, index) => {
    const width = column.share * room;
    const lines = wrapped(face, plainText(row[index] ?? ""), {
      capHeight: CELL_HEIGHT,
      width: width - GUTTER,
    });
    const cell = { lines, x };
    x += width;
    return cell;
  });
  const count = Math.max(...cells.map((cell) => cell.lines.length));
  return { cells, height: count * LINE_PITCH + ROW_PAD, hasRule: true };
};

const noteBlock = (note: string, { face, room }: RowRoom): Block => {
  const lines = wrapped(face, plainText(note), { capHeight: CELL_HEIGHT, width: room });
  return {
    cells: [{ lines, x: MARGIN }],
    height: lines.length * LINE_PITCH + ROW_PAD,
    hasRule: false,
  };
};

/** At least one page; a block that is taller than a page has one of its own. */
const splitBlocks = (blocks: readonly Block[], room: number): readonly (readonly Block[])[] => {
  const pages: Block[][] = [[]];
  let used = 0;
  for (const block of blocks) {
    if (used > 0 && used + block.height > room) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(block);
    used += block.height;
  }
  return pages;
};

const headingItems = (
  table: PaperTable,
  face: Face,
  page: { readonly height: Mm; readonly count: number; readonly index: number },
): readonly DrawingItem[] => {
  const count = page.count === 1 ? "" : ` (page ${page.index + 1} of ${page.count})`;
  const at = point(MARGIN, page.height - MARGIN - HEADING_HEIGHT);
  const look = { capHeight: HEADING_HEIGHT, align: "start", ink: "line" } as const;
  return words(face, `${plainText(table.heading)}${count}`, at, look).items;
};

const blockItems = (
  blocks: readonly Block[],
  face: Face,
  page: { readonly top: number; readonly width: Mm },
): readonly DrawingItem[] => {
  const items: DrawingItem[] = [];
  let top = page.top;
  for (const block of blocks) {
    const first = top - ROW_PAD / 2 - CELL_HEIGHT;
    for (const cell of block.cells)
      for (const [index, line] of cell.lines.entries()) {
        const at = point(cell.x, first - index * LINE_PITCH);
        items.push(...words(face, line, at, CELL_LOOK).items);
      }
    top -= block.height;
    if (block.hasRule) items.push(ruleItem(top, page.width));
  }
  return items;
};

const CELL_LOOK = { capHeight: CELL_HEIGHT, align: "start", ink: "line" } as const;

const ruleItem = (y: number, width: Mm): DrawingItem =>
  stroked([segment(MARGIN, y, width - MARGIN, y)], { ink: "faint", width: RULE });
