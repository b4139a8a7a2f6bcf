// Codes for component lists: CSV files and tables pasted from a spreadsheet.

import type { CodeEntry, Severity } from "../diagnostics/finding.ts";

const list = (
  name: string,
  title: string,
  said: { readonly why: string; readonly example: string; readonly severity?: Severity },
): CodeEntry => ({
  code: `design/list-${name}`,
  severity: said.severity ?? "fault",
  title,
  why: said.why,
  example: said.example,
});

export const LIST_CODES = {
  noHeader: list("no-header", "The list has no line of column names", {
    why: "The first line names the columns, in any order: part, quantity, legend, group, note. Without it a quantity could be taken for a legend.",
    example: "toggle-12, 2, BRAKE",
  }),
  unknownColumn: list("unknown-column", "A column name is not known", {
    why: "Columns are part, quantity, legend, group and note. What stands under another name would be lost.",
    example: "part, number, legend",
  }),
  columnTwice: list("column-twice", "A column is named twice", {
    why: "One of the two would silently win. Take out the one that is not meant.",
    example: "part, quantity, quantity",
  }),
  cells: list("cells", "A line has more cells than there are columns", {
    why: "A comma within a legend ends the cell. Put the legend in quotation marks.",
    example: "part, quantity, legend\ntoggle-12, 1, LEFT, RIGHT",
  }),
  quotes: list("quotes", "A quotation mark is not closed", {
    why: "Everything up to the end of the list would become one cell. A quotation mark within a quoted cell is written twice.",
    example: 'part, legend\ntoggle-12, "BRAKE',
  }),
  quantity: list("quantity", "The quantity is not a whole number from 1 to 999", {
    why: "Parts are counted in whole numbers; an empty quantity counts as one.",
    example: "part, quantity\ntoggle-12, two",
  }),
  noPart: list("no-part", "A line names no part", {
    why: "A part that is not named can't be placed or bought. Name it, or take the line out.",
    example: "part, quantity\n, 2",
  }),
  leftover: list("leftover", "The cell holds a leftover of the spreadsheet", {
    why: "Cells like #REF!, #N/A or =A1 are formulas that were not worked out. Copy the values, not the formulas.",
    example: "part, legend\ntoggle-12, #REF!",
  }),
  emptyList: list("empty", "The list names no parts", {
    why: "Each line after the column names gives one part.",
    example: "part, quantity",
  }),
  spreadsheetDate: list("spreadsheet-date", "A cell looks like a date that the spreadsheet made", {
    why: "Spreadsheets turn parts and legends such as 1/2 or MAR 1 into dates. Check that this is what was meant.",
    example: "part, legend\ntoggle-12, 01-Feb",
    severity: "query",
  }),
} as const;
