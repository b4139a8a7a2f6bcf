// What `make` writes of a solid into a STEP file.

import { stepFile } from "../../src/export/step.ts";
import type { LayeredSolid } from "../../src/geometry/solid/solid.ts";

export const stepTextOf = (solid: LayeredSolid, name = "part"): string => {
  const file = stepFile(solid, name);
  if (file.kind === "refused") throw new Error(file.why);
  return file.text;
};
