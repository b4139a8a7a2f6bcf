// Tables for a spreadsheet, as RFC 4180 has them: takes a heading and rows, gives text with CRLF line ends.
// A spreadsheet runs text that begins like a formula; such text gets an apostrophe in front (OWASP, "CSV injection").
// Numbers are written as numbers, so that a minus sign in front of one stays what it is.

import { decimal } from "../geometry/number.ts";

export type CsvCell = string | number;

const PLACES = 6;

export const csvText = (
  heading: readonly string[],
  rows: readonly (readonly CsvCell[])[],
): string => [heading, ...rows].map((row) => `${row.map(csvCell).join(",")}\r\n`).join("");

const csvCell = (cell: CsvCell): string => {
  if (typeof cell === "number") return decimal(cell, PLACES);
  const safe = looksLikeFormula(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

// White space in front does not stop a spreadsheet, and the full-width forms are taken for the plain ones.
const looksLikeFormula = (text: string): boolean =>
  /^[\s\0]*[=+\-@|%\uff1d\uff0b\uff0d\uff20]/.test(text) || /^[\t\r\n\0]/.test(text);
