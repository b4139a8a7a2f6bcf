// Cells of a report as words: numbers to the decimals of their column, yes and no, and what a column says where there is no value.

import { decimal } from "../geometry/number.ts";
import type { ReportCell, ReportColumn, ReportTable } from "./report.ts";

export const rowWords = ({ columns, rows }: ReportTable): readonly (readonly string[])[] =>
  rows.map((row) => columns.map((column, index): string => cellWords(row[index] ?? null, column)));

const cellWords = (cell: ReportCell, { none, places }: ReportColumn): string => {
  if (cell === null) return none;
  if (typeof cell === "number") return decimal(cell, places);
  if (typeof cell === "boolean") return cell ? "yes" : "no";
  return cell;
};
