// Do the written files of a panel fit on each other? Takes them as text; gives a row for register and one for revision
// of each. `inspectFiles` gives these rows too, after those of the single files.

import { layersTogether } from "./layers-together.ts";
import type { InspectionRow } from "./row.ts";
import { understoodFile, type WrittenFile } from "./written-file.ts";

export const inspectTogether = (files: readonly WrittenFile[]): readonly InspectionRow[] =>
  layersTogether(files.map(understoodFile));
