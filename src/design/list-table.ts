// A text of cells as rows: separated by commas, semicolons or tabs (whichever the first line has), cells in quotation
// marks by RFC 4180. A table of | cells | with a line of dashes is read too. Empty lines are passed over.

import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { BYTE_ORDER_MARK } from "../diagnostics/position.ts";
import { LIST_CODES } from "./codes-of-lists.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { MOST_LIST_CHARACTERS } from "./list-caps.ts";
import { type Source, spanIn } from "./source.ts";

export interface Cell {
  /** Without quotation marks and the spaces round it. */
  readonly text: string;
  readonly isQuoted: boolean;
  readonly span: Span;
}

export interface Table {
  readonly kind: "table";
  readonly header: readonly Cell[];
  readonly rows: readonly (readonly Cell[])[];
}

export type ReadTable = Table | { readonly kind: "refused"; readonly finding: Finding };

export const tableOf = (from: Source): ReadTable => {
  if (from.text.length > MOST_LIST_CHARACTERS) {
    return refused(TEXT_CODES.tooLarge, {
      message: `the list has ${from.text.length} characters; at most ${MOST_LIST_CHARACTERS} are read`,
      span: spanIn(from, 0, 0),
    });
  }
  const start = from.text.startsWith(BYTE_ORDER_MARK) ? 1 : 0;
  const separator = separatorOf(from.text.slice(start));
  const rows: (readonly Cell[])[] = [];
  for (let at = start; at < from.text.length; ) {
    const row = rowAt(from, at, separator);
    if (row.kind === "refused") {
      return row;
    }
    rows.push(row.cells);
    at = row.next;
  }
  const [header = [], ...rest] = rows
    .map((row) => (separator === "|" ? withoutFrame(row) : row))
    .filter(isNotEmpty);
  return { kind: "table", header, rows: rest };
};

const refused = (
  code: Parameters<typeof finding>[0],
  parts: Parameters<typeof finding>[1],
): { readonly kind: "refused"; readonly finding: Finding } => ({
  kind: "refused",
  finding: finding(code, parts),
});

type Separator = "," | ";" | "\t" | "|";

/** The first line decides; a tab wins, because spreadsheets paste it and nobody types it. */
const separatorOf = (text: string): Separator => {
  const line = /^\s*([^\r\n]*)/.exec(text)?.[1] ?? "";
  if (line.startsWith("|")) {
    return "|";
  }
  const present = (["\t", ";", ","] as const).find((mark) => line.includes(mark));
  return present ?? ",";
};

type Row =
  | { readonly kind: "row"; readonly cells: readonly Cell[]; readonly next: number }
  | { readonly kind: "refused"; readonly finding: Finding };

const rowAt = (from: Source, start: number, separator: Separator): Row => {
  const cells: Cell[] = [];
  for (let at = start; ; ) {
    const cell = cellAt(from, at, separator);
    if (cell.kind === "refused") {
      return cell;
    }
    cells.push(cell.cell);
    if (from.text[cell.next] !== separator) {
      return { kind: "row", cells, next: lineEnd(from.text, cell.next) };
    }
    at = cell.next + 1;
  }
};

/** Behind the line end that stands at an offset. */
const lineEnd = (text: string, at: number): number => {
  const afterReturn = text[at] === "\r" ? at + 1 : at;
  return text[afterReturn] === "\n" ? afterReturn + 1 : Math.max(afterReturn, at + 1);
};

type ReadCell =
  | { readonly kind: "cell"; readonly cell: Cell; readonly next: number }
  | { readonly kind: "refused"; readonly finding: Finding };

const cellAt = (from: Source, at: number, separator: Separator): ReadCell => {
  const { text } = from;
  const quote = /[^\S\r\n\t]*"/y;
  quote.lastIndex = at;
  if (quote.test(text)) {
    return quotedCell(from, quote.lastIndex, separator);
  }
  const next = cellEnd(text, at, separator);
  const written = text.slice(at, next);
  const start = at + written.length - written.trimStart().length;
  const words = written.trim();
  return {
    kind: "cell",
    cell: { text: words, isQuoted: false, span: spanIn(from, start, start + words.length) },
    next,
  };
};

const cellEnd = (text: string, at: number, separator: Separator): number => {
  let end = at;
  while (end < text.length && text[end] !== separator && text[end] !== "\n" && text[end] !== "\r") {
    end += 1;
  }
  return end;
};

/** `start` is behind the opening quotation mark. What follows the closing one must be the end of the cell. */
const quotedCell = (from: Source, start: number, separator: Separator): ReadCell => {
  const { text } = from;
  let close = text.indexOf('"', start);
  while (close !== -1 && text[close + 1] === '"') {
    close = text.indexOf('"', close + 2);
  }
  const next = close === -1 ? text.length : cellEnd(text, close + 1, separator);
  if (close === -1 || text.slice(close + 1, next).trim() !== "") {
    const why = close === -1 ? "is not closed" : "is followed by more text";
    return refused(LIST_CODES.quotes, {
      message: `a cell in quotation marks ${why}; a quotation mark within a cell is written twice`,
      span: spanIn(from, start - 1, Math.min(next, start + 40)),
    });
  }
  return {
    kind: "cell",
    cell: {
      text: text.slice(start, close).replaceAll('""', '"').trim(),
      isQuoted: true,
      span: spanIn(from, start - 1, close + 1),
    },
    next,
  };
};

/** A row between bars begins and ends with an empty cell that is none; a line of dashes is no row. */
const withoutFrame = (row: readonly Cell[]): readonly Cell[] => {
  const inner = row.slice(row[0]?.text === "" ? 1 : 0, row.at(-1)?.text === "" ? -1 : row.length);
  return inner.every(({ text }) => /^:?-+:?$/.test(text)) ? [] : inner;
};

const isNotEmpty = (row: readonly Cell[]): boolean => row.some(({ text }) => text !== "");
