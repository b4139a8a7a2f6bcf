// A written cut file as the inspection takes it, and as it stands once it is read and its features are found.

import { readDxf } from "./dxf-reader.ts";
import { type InspectionOf, type Understood, understood } from "./inspect-file.ts";
import type { ReadFile } from "./read-file.ts";
import { sheetCorner } from "./sheet-corner.ts";
import { readSvg } from "./svg-reader.ts";

export interface WrittenFile extends InspectionOf {
  readonly format: "svg" | "dxf";
  readonly text: string;
}

export interface UnderstoodFile extends InspectionOf {
  readonly read: ReadFile;
  readonly reading: Understood;
}

export const understoodFile = (written: WrittenFile): UnderstoodFile => {
  const { part, setUp, file } = written;
  const corner = sheetCorner(setUp);
  const isSvg = written.format === "svg";
  const read = isSvg ? readSvg(written.text, corner) : readDxf(written.text, corner);
  return { part, setUp, file, read, reading: understood(read, setUp) };
};
