// A report for programs: each section's rows as objects with the keys of its columns, numbers to a millionth, null where there is none.

import { fixed } from "../geometry/number.ts";
import type { Report, ReportCell, ReportTable } from "./report.ts";

export const reportJson = ({ title, facts, sections }: Report, format: string): string => {
  const rows = ({ columns, rows: cells }: ReportTable): readonly object[] =>
    cells.map((row) => Object.fromEntries(columns.map(({ key }, at) => [key, plain(row[at])])));
  const body = Object.fromEntries(
    sections.map(({ id, words, table }) => [
      id,
      { words, rows: table === null ? [] : rows(table) },
    ]),
  );
  return `${JSON.stringify({ format, title, facts, sections: body }, null, 2)}\n`;
};

const PLACES = 6;

const plain = (cell: ReportCell | undefined): ReportCell =>
  typeof cell === "number" ? Number(fixed(cell, PLACES)) : (cell ?? null);
