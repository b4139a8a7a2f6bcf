// Cells of a report as words: numbers to a hundredth, yes and no, and what a column says where there is no value.

import { decimal } from "../geometry/number.ts";
import type { ReportCell, ReportTable } from "./report.ts";

/** A rule reads no more. */
const PLACES = 2;

export const cellWords = (cell: ReportCell, none: string): string => {
  if (cell === null) return none;
  if (typeof cell === "number") return decimal(cell, PLACES);
  if (typeof cell === "boolean") return cell ? "yes" : "no";
  return cell;
};

export const rowWords = ({ columns, rows }: ReportTable): readonly (readonly string[])[] =>
  rows.map((row) => row.map((cell, index) => cellWords(cell, columns[index]?.none ?? "")));
