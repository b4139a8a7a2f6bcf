// Whose limit a display's sizes are: those of its record.

import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import type { LimitSource } from "../../diagnostics/finding.ts";
import { invariant } from "../../geometry/invariant.ts";
import type { PanelFacts } from "../rule.ts";

export const displaySource = (owner: string, { layout }: PanelFacts): LimitSource => {
  const display = layout.components.find(({ id }) => id === owner);
  invariant(display !== undefined, "a trim is round a display of its panel");
  return limitOfFigures(display.part.figures);
};
