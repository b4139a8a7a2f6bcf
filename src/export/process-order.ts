// The order of work at the machine, and so the order of the groups in every cut file.
// The FRONT witness in the waste comes first, while the waste still holds still; then marks, then openings, and the
// outline last, because a part that is free moves (common practice of laser workshops).

import type { Process } from "../parts/sheet-part.ts";

export const PROCESS_ORDER: readonly Process[] = [
  "witness",
  "engrave",
  "score",
  "drill",
  "cut-inner",
  "cut-outer",
];
