// Where a file is, or would be once it is written: the nearest folder that there is, all links followed.

import { dirname } from "node:path";
import type { Disk } from "../disk.ts";

export const trueTarget = (target: string, disk: Disk): string => {
  if (disk.look(target) !== "nothing") return disk.truePath(target);
  const above = dirname(target);
  return above === target ? target : trueTarget(above, disk);
};
