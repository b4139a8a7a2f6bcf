// Whose limit a display's sizes are: those of its record.

import type { LimitSource } from "../../diagnostics/finding.ts";
import type { PanelFacts } from "../rule.ts";

export const displaySource = (owner: string, { layout }: PanelFacts): LimitSource => ({
  kind: "datasheet",
  name: layout.components.find(({ id }) => id === owner)?.part.figures.source ?? owner,
});
