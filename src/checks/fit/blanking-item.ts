// The line of a console's text that closes free modules with a blanking panel: as many whole ones as there are. Takes a bay and
// a free run of it; null where no blanking panel can be made for it, as where a bay counts in millimetres.

import { decimal } from "../../geometry/number.ts";
import type { BayLayout, FreeRun } from "../../layout/console/console-layout.ts";

export interface BlankingItem {
  readonly text: string;
  /** Nothing of the run stays open. */
  readonly closesAll: boolean;
}

export const blankingItem = (bay: BayLayout, run: FreeRun): BlankingItem | null => {
  const whole = Math.floor(run.modules + WHOLE);
  const { unit } = bay.mount.height;
  if (whole < 1 || unit === "mm") return null;
  const at = decimal(run.from / bay.pitch, 3);
  return {
    text: `{ blanking: ${whole} ${unit}, bay: ${bay.id}, module: ${at} }`,
    closesAll: run.modules - whole < WHOLE,
  };
};

/** A count this close to the next whole one is that: lengths are kept to a nanometre. */
const WHOLE = 1e-4;
