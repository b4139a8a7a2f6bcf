// Who says how far apart two controls stand: a standard, where one has the figure; else how it came about.

import type { LimitSource } from "../diagnostics/finding.ts";
import { separationKind } from "../standards/separation.ts";

export const handSource = (source: string): LimitSource => ({
  kind: separationKind(source),
  name: source,
});
