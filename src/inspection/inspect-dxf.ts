// Reads a written DXF cut file back, of 2007 or R12, and measures it against its set-up. Takes the file's text; gives
// the table's rows.

import { readDxf } from "./dxf-reader.ts";
import { type InspectionOf, inspectFile } from "./inspect-file.ts";
import type { InspectionRow } from "./row.ts";
import { sheetCorner } from "./sheet-corner.ts";

export const inspectDxf = (text: string, of: InspectionOf): readonly InspectionRow[] =>
  inspectFile(readDxf(text, sheetCorner(of.setUp)), of);
