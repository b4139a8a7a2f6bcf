// One change of the open panel's text on behalf of its photograph, as one step of the history, told in words.

import type { Edit } from "../../src/design/edit.ts";
import { type Source, source } from "../../src/design/source.ts";
import { panel, texts } from "../desk.ts";
import { takeEdit } from "../panel/told-edit.ts";

/** `more` stands behind what is said of the deed once it is done. */
export function photoStep(make: (from: Source) => Edit, what: string, more = ""): boolean {
  const file = panel.value?.file;
  const text = file === undefined ? undefined : texts.value.get(file);
  if (file === undefined || text === undefined) return false;
  return takeEdit(make(source(file, text)), what, `${what}${more}`);
}
