// The inspection of the files to cut and print from as a table to read and one to compute with.

import { csvText } from "../export/csv.ts";
import { markdownTable } from "../export/markdown-table.ts";
import { fixed } from "../geometry/number.ts";
import type { InspectionRow } from "../inspection/row.ts";
import type { PackFile } from "./pack-file.ts";
import { paperFile } from "./paper-file.ts";

/** The files are right to this; beside it stands what a machine makes of them (common practice). */
const CUTTER =
  "The files are right to a thousandth of a millimetre. A cutter holds about 0.1 mm: measure the first piece.";

export const inspectionPapers = (rows: readonly InspectionRow[]): readonly PackFile[] => [
  paperFile("inspection", "inspection.md", inspectionText(rows)),
  paperFile("inspection", "inspection.csv", inspectionTable(rows)),
];

const inspectionText = (rows: readonly InspectionRow[]): string => {
  const failed = rows.filter(({ passed }) => !passed);
  const files = [...new Set(rows.map(({ file }) => file))];
  return [
    "# Inspection",
    "",
    "Every file to cut or print from was read back by code of its own and measured against what it must be.",
    CUTTER,
    "",
    `${rows.length} measurements in ${files.length} files, ${failed.length} wrong. All of them are in inspection.csv.`,
    "",
    markdownTable(
      [
        { title: "file", align: "left" },
        { title: "measurements", align: "right" },
        { title: "largest difference, mm", align: "right" },
        { title: "wrong", align: "right" },
      ],
      files.map((file) => fileRow(file, rows)),
    ),
  ].join("\n");
};

/** Areas and volumes differ in mm² and mm³ and are not compared with lengths. */
const fileRow = (file: string, rows: readonly InspectionRow[]): readonly string[] => {
  const own = rows.filter((row) => row.file === file);
  const lengths = own.flatMap(({ what, difference }) =>
    what === "area" || what === "volume" || difference === null ? [] : [difference],
  );
  const largest = lengths.reduce((most, difference) => Math.max(most, difference), 0);
  const wrong = own.filter(({ passed }) => !passed).length;
  return [file, String(own.length), fixed(largest, 6), String(wrong)];
};

const inspectionTable = (rows: readonly InspectionRow[]): string =>
  csvText(
    ["file", "feature", "what", "expected", "measured", "difference", "result"],
    rows.map((row) => [
      row.file,
      row.feature,
      row.what,
      row.expected,
      row.measured,
      row.difference ?? "",
      row.passed ? "right" : "WRONG",
    ]),
  );
