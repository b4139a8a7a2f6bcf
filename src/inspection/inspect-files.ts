// The whole inspection of a job: every file measured by itself, then the files of each panel laid on each other. Takes the
// written files as text, each with the set-up that it was made from; reads each once; gives the table's rows in order.

import { rowsOf } from "./inspect-file.ts";
import { layersTogether } from "./layers-together.ts";
import type { InspectionRow } from "./row.ts";
import { understoodFile, type WrittenFile } from "./written-file.ts";

export const inspectFiles = (files: readonly WrittenFile[]): readonly InspectionRow[] => {
  const read = files.map(understoodFile);
  return [
    ...read.flatMap((file) => rowsOf(file.read, file.reading, file)),
    ...layersTogether(read),
  ];
};
