// Whatever is picked copied to the nearest free place, as one step of the history, and the copies picked.

import { lengthIn } from "../../src/design/length-text.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";
import { gridStep, offer, say, selectedEntries, things, unit } from "./board.ts";
import { thingsCopied } from "./copy-edits.ts";
import { freePlace } from "./free-place.ts";
import { type Open, open } from "./open-panel.ts";
import { freshNames, named, selectEntries } from "./panel-names.ts";
import { withMembers } from "./sheet-things.ts";
import { takeEdit } from "./told-edit.ts";

export function copySelection(): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  const { from, layout } = on;
  const nameOf = freshNames(on.panel);
  const nameLike = (entry: string): string => nameOf(null, entry.replace(/-\d+$/, ""));
  const { shift, words } = placeFor(on, entries);
  const copied = thingsCopied(from, { entries, shift, layout, nameLike });
  const what = `copy ${named(entries)}`;
  offer.value = null;
  if (copied.kind === "refused") say(`Not copied: ${copied.why}.`);
  else if (copied.edit.kind === "refused") say(`Not copied: ${copied.edit.why}.`);
  else if (copied.kind === "choice") {
    const { why, title, edit } = copied;
    offer.value = { why, title: `${title}${words}`, edits: [edit.edit], what };
    say(`Not yet copied: ${why}. Offered: ${title}.`);
  } else if (takeEdit(copied.edit, what, `Copied as ${named(copied.names)}${words}`))
    selectEntries(copied.names);
}

/** Clear of all else on the sheet, where a place is; else beside it, and `words` say so. */
function placeFor({ layout }: Open, entries: readonly string[]): { shift: Shift; words: string } {
  const whole = withMembers(entries, layout.design);
  const ids = things.value.filter(({ entry }) => whole.includes(entry)).map(({ id }) => id);
  const place = freePlace(new Set(ids), layout, gridStep.value);
  if (place === null) return { shift: { x: 0, y: 0 }, words: "" };
  const { box, shift, isFree } = place;
  const size = `${lengthIn(unit.value, extentWidth(box))} by ${lengthIn(unit.value, extentHeight(box))}`;
  return {
    shift,
    words: isFree
      ? ""
      : `. The sheet has no place of ${size} that is clear of all else: it stands where it is seen, and is to be moved`,
  };
}
