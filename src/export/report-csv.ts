// A report as one table for a spreadsheet: a line a value, with the section, the number of its row and the column it is of.

import { type CsvCell, csvText } from "./csv.ts";
import type { Report } from "./report.ts";

export const reportCsv = ({ sections }: Report): string =>
  csvText(
    ["section", "row", "what", "value"],
    sections.flatMap(({ id, table }) =>
      (table?.rows ?? []).flatMap((row, number) =>
        row.map((cell, at): readonly CsvCell[] => {
          const column = table?.columns[at];
          const value = typeof cell === "boolean" ? (cell ? "yes" : "no") : (cell ?? column?.none);
          return [id, number + 1, column?.key ?? "", value ?? ""];
        }),
      ),
    ),
  );
