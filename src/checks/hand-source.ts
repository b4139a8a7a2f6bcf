// Who says how far apart two controls stand: a standard, where one has the figure; else practice, with how it came about.

import type { LimitSource } from "../diagnostics/finding.ts";
import { isPublished } from "../standards/separation.ts";

export const handSource = (source: string): LimitSource => ({
  kind: isPublished(source) ? "standard" : "practice",
  name: source,
});
