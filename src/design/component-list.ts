// The other door: a component list as CSV or as a table pasted from a spreadsheet. The first line names the columns
// (part, quantity, legend, group, note) in any order; each further line is one part.

import { type CodeEntry, type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { inWords, nearestHint, nearestNames } from "../diagnostics/nearest.ts";
import { printable } from "../diagnostics/printable.ts";
import { LIST_CODES } from "./codes-of-lists.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Cell, type Table, tableOf } from "./list-table.ts";
import { type Source, shortened, source, spanIn } from "./source.ts";
import { LONGEST_NAME, NAME, nameHint } from "./text-fields.ts";

export interface ComponentList {
  readonly file: string;
  /** Lines that could be read, in their order. */
  readonly lines: readonly ListLine[];
  readonly findings: readonly Finding[];
}

export interface ListLine {
  readonly part: string;
  readonly quantity: number;
  readonly legend: string | null;
  readonly group: string | null;
  readonly note: string | null;
  readonly span: Span;
  /** Where each cell that is not empty stands, by column. */
  readonly cells: Readonly<Partial<Record<Column, Span>>>;
}

export const LIST_COLUMNS = ["part", "quantity", "legend", "group", "note"] as const;
export type Column = (typeof LIST_COLUMNS)[number];

/** `parts`: names that exist, of which the nearest are offered for one that is none. */
export const readComponentList = (
  file: string,
  text: string,
  parts: readonly string[] = [],
): ComponentList => {
  const from = source(file, text);
  if (text.trim() === "") {
    const message = "the list is empty; its first line is to name its columns, `part` among them";
    return { file, lines: [], findings: [told(LIST_CODES.emptyList, message, spanIn(from, 0, 0))] };
  }
  const table = tableOf(from);
  if (table.kind === "refused") {
    return { file, lines: [], findings: [table.finding] };
  }
  const columns = columnsOf(from, table);
  if (columns.findings.length > 0) {
    return { file, lines: [], findings: columns.findings };
  }
  const readings = table.rows.map((row) => lineOf(row, columns.names, parts));
  const lines = readings.flatMap(({ line }) => (line === null ? [] : [line]));
  const findings = readings.flatMap((reading) => reading.findings);
  const empty =
    table.rows.length === 0
      ? [told(LIST_CODES.emptyList, "the list names no parts", spanIn(from, 0, 0))]
      : [];
  return { file, lines, findings: [...findings, ...empty] };
};

interface Columns {
  readonly names: readonly Column[];
  readonly findings: readonly Finding[];
}

const columnsOf = (from: Source, { header }: Table): Columns => {
  const names: Column[] = [];
  const findings: Finding[] = [];
  const written = header.map((cell) => cell.text.toLowerCase());
  if (!written.includes("part")) {
    const span = header[0]?.span ?? spanIn(from, 0, 0);
    const message = `the first line has no column \`part\`; write the column names there: ${LIST_COLUMNS.join(", ")}`;
    return { names, findings: [told(LIST_CODES.noHeader, message, span)] };
  }
  for (const [index, cell] of header.entries()) {
    const column = LIST_COLUMNS.find((name) => name === written[index]);
    if (column === undefined) {
      findings.push(unknownColumn(cell));
    } else if (names.includes(column)) {
      findings.push(
        told(LIST_CODES.columnTwice, `the column ${column} is there twice; keep one`, cell.span),
      );
    } else {
      names.push(column);
    }
  }
  return { names, findings };
};

const unknownColumn = ({ text, span }: Cell): Finding => {
  const message =
    text === ""
      ? "a column has no name; name it or take it out"
      : `${shortened(text)} is not a column; the nearest are ${inWords(nearestNames(text, LIST_COLUMNS), "and")}`;
  return told(LIST_CODES.unknownColumn, message, span);
};

interface LineReading {
  readonly line: ListLine | null;
  readonly findings: readonly Finding[];
}

const lineOf = (
  row: readonly Cell[],
  columns: readonly Column[],
  parts: readonly string[],
): LineReading => {
  const further = row[columns.length];
  if (further !== undefined) {
    const message = `the line has ${row.length} cells for ${columns.length} columns; put a text that holds the separator in quotation marks`;
    return { line: null, findings: [told(LIST_CODES.cells, message, further.span)] };
  }
  const cell = (column: Column): Cell | null => {
    const found = row[columns.indexOf(column)];
    return found === undefined || found.text === "" ? null : found;
  };
  const findings = row.flatMap((each) => cellFindings(each));
  const part = partOf(row, cell("part"), parts);
  const quantity = quantityOf(cell("quantity"));
  const all = [...findings, ...part.findings, ...quantity.findings];
  if (part.value === null || quantity.value === null || all.some(isFault)) {
    return { line: null, findings: all };
  }
  return {
    line: {
      part: part.value,
      quantity: quantity.value,
      legend: cell("legend")?.text ?? null,
      group: cell("group")?.text ?? null,
      note: cell("note")?.text ?? null,
      span: rowSpan(row),
      cells: Object.fromEntries(
        columns.flatMap((column) => {
          const found = cell(column);
          return found === null ? [] : [[column, found.span]];
        }),
      ),
    },
    findings: all,
  };
};

const isFault = (found: Finding): boolean => found.severity === "fault";

interface Value<Of> {
  readonly value: Of | null;
  readonly findings: readonly Finding[];
}

const partOf = (
  row: readonly Cell[],
  cell: Cell | null,
  parts: readonly string[],
): Value<string> => {
  if (cell === null) {
    const message = "the line names no part";
    return { value: null, findings: [told(LIST_CODES.noPart, message, rowSpan(row))] };
  }
  if (cell.text.length <= LONGEST_NAME && NAME.test(cell.text)) {
    return { value: cell.text, findings: [] };
  }
  // Written as a name is, what was meant is nearer: "push button 16mm" to push-button-16.
  const near = nearestNames(cell.text.trim().replaceAll(/[^A-Za-z0-9]+/g, "-"), parts);
  const hint = near.length === 0 ? `; ${nameHint(cell.text)}` : nearestHint(near);
  const message = `${shortened(cell.text)} is not the name of a part${hint}`;
  return { value: null, findings: [told(VALUE_CODES.notAName, message, cell.span)] };
};

const quantityOf = (cell: Cell | null): Value<number> => {
  if (cell === null) {
    return { value: 1, findings: [] };
  }
  const figures = /^(\d{1,3})(?:\.0+)?$/.exec(cell.text)?.[1];
  const value = Number(figures ?? 0);
  if (value >= 1) {
    return { value, findings: [] };
  }
  const message = `${shortened(cell.text)} is not a quantity; write a whole number from 1 to 999`;
  return { value: null, findings: [told(LIST_CODES.quantity, message, cell.span)] };
};

/** What no cell should hold: hidden characters, formulas and their errors, dates that a spreadsheet has made. */
const cellFindings = ({ text, span, isQuoted }: Cell): readonly Finding[] => {
  if (text.length > LONGEST_CELL) {
    return [
      told(
        VALUE_CODES.textTooLong,
        `the cell has ${text.length} characters; at most ${LONGEST_CELL} find room`,
        span,
      ),
    ];
  }
  if (/[\n\r]/.test(text)) {
    return [told(VALUE_CODES.textOfLines, "the cell runs over more than one line", span)];
  }
  if (printable(text) !== text) {
    return [
      told(TEXT_CODES.hiddenCharacter, "the cell holds a character that cannot be seen", span),
    ];
  }
  if (
    /^#(?:REF|N\/A|VALUE|NAME|DIV\/0|NUM|NULL)[!?]?$/i.test(text) ||
    (!isQuoted && text.startsWith("="))
  ) {
    return [
      told(
        LIST_CODES.leftover,
        `${shortened(text)} is a leftover of the spreadsheet; write the value`,
        span,
      ),
    ];
  }
  return DATE_OF_A_SPREADSHEET.test(text)
    ? [
        told(
          LIST_CODES.spreadsheetDate,
          `${shortened(text)} looks like a date that the spreadsheet made; check what it was`,
          span,
        ),
      ]
    : [];
};

const LONGEST_CELL = 200;

/** "01-Feb", "Mar-01", "2/1/2026": what 1/2 or MAR 1 become when they are typed into a cell. */
const DATE_OF_A_SPREADSHEET =
  /^(?:\d{1,2}-(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)|(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)-\d{2}|\d{1,2}\/\d{1,2}\/\d{4})$/i;

const rowSpan = (row: readonly Cell[]): Span => {
  const first = row[0]?.span;
  const last = row.at(-1)?.span;
  return { file: first?.file ?? "", start: first?.start ?? 0, end: last?.end ?? 0 };
};

const told = (code: CodeEntry, message: string, span: Span): Finding =>
  finding(code, { message, span });
