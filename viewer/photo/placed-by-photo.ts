// What is placed or moved while "from the photograph" is ticked says so in the same edit: how far off it may be.

import { takenFromPhoto } from "../../src/design/photo-edit.ts";
import { difference } from "../../src/design/rewriting.ts";
import { type Source, source } from "../../src/design/source.ts";
import { applyEdits, type TextEdit } from "../../src/diagnostics/text-edit.ts";
import { isTaking, residualText } from "./photo-state.ts";

export interface PlacedByPhoto {
  readonly edits: readonly TextEdit[];
  /** Behind what is said of the deed; empty where nothing was ticked. */
  readonly words: string;
}

/** The edits of one file that place these components, with what the photograph says of them. */
export function placedByPhoto(
  edits: readonly TextEdit[],
  from: Source,
  entries: readonly string[],
): PlacedByPhoto {
  const residual = isTaking.value ? residualText() : null;
  const moved = residual === null ? null : applyEdits(from.text, edits);
  if (residual === null || moved?.kind !== "edited") return { edits, words: "" };
  const said = takenFromPhoto(source(from.file, moved.text), entries, residual);
  const whole = said.kind === "edit" ? applyEdits(moved.text, [said.edit]) : said;
  return whole.kind === "edited"
    ? { edits: [difference(from, whole.text)], words: `, from the photograph ± ${residual}` }
    : { edits, words: `; not said to be from the photograph: ${whole.why}` };
}
