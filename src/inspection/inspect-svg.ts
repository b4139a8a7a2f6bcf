// Reads a written SVG cut file back and measures it against its set-up. Takes the file's text; gives the table's rows.

import { type InspectionOf, inspectFile } from "./inspect-file.ts";
import type { InspectionRow } from "./row.ts";
import { sheetCorner } from "./sheet-corner.ts";
import { readSvg } from "./svg-reader.ts";

export const inspectSvg = (text: string, of: InspectionOf): readonly InspectionRow[] =>
  inspectFile(readSvg(text, sheetCorner(of.setUp)), of);
