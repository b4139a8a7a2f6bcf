// Whose limit the figures of a record are, for a finding that judges by them: what is remembered is no datasheet.

import type { LimitSource } from "../diagnostics/finding.ts";
import type { Figures } from "./part.ts";

export const limitOfFigures = ({
  source,
  kind,
}: Pick<Figures, "source" | "kind">): LimitSource => ({
  kind: kind === "measured" ? "workshop" : kind,
  name: source,
});
