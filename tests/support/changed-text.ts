// A text with one edit carried out, or why there is none as an error of the test.

import type { Edit } from "../../src/design/edit.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";

export const changedText = (text: string, made: Edit): string => {
  if (made.kind === "refused") throw new Error(made.why);
  const applied = applyEdits(text, [made.edit]);
  if (applied.kind === "refused") throw new Error(applied.why);
  return applied.text;
};
