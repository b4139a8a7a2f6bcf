// What is done to the open panel, each as one step of the history: the edits are worked out from the text and the layout, handed
// to the desk, and told in words.

import { replaceValue } from "../../src/design/edit.ts";
import { isLengthText } from "../../src/design/length-text.ts";
import type { Written } from "../../src/design/written.ts";
import { moveEdits } from "../../src/layout/move-edits.ts";
import { placeAdded, placedByPhoto, placesIn } from "../photo/placed-by-photo.ts";
import { inHand, offer, say, selectedEntries, unit } from "./board.ts";
import { componentAdded } from "./component-edits.ts";
import { movedWords } from "./moved-words.ts";
import { componentRenamed } from "./naming-edits.ts";
import { open } from "./open-panel.ts";
import type { PartCard } from "./panel-messages.ts";
import { freshNames, named, namesOn, selectEntries } from "./panel-names.ts";
import type { Shift } from "./snap.ts";
import { take } from "./told-edit.ts";

export const moveSelection = (shift: Shift): void => moveEntries(selectedEntries.value, shift);

export function moveEntries(entries: readonly string[], shift: Shift): void {
  const on = open();
  if (on === null || entries.length === 0) return;
  const outcome = moveEdits({ entries, ...shift }, on.layout, on.from);
  const what = `move ${named(entries)}`;
  offer.value = null;
  switch (outcome.kind) {
    case "still":
      return;
    case "refused":
      say(`Not moved: ${outcome.why}.`);
      return;
    case "edits": {
      const { edits, words } = placedByPhoto(
        outcome.edits,
        on.from,
        placesIn(on.layout, on.from, entries),
      );
      const { says } = outcome;
      take(edits, what, `${movedWords({ entries, shift, says }, unit.value)}${words}`);
      return;
    }
    case "choice":
      offer.value = { why: outcome.why, title: outcome.title, edits: outcome.free, what };
      say(`Not moved: ${outcome.why}. Offered: ${outcome.title}.`);
  }
}

/** Everywhere in the panel's file, as one step. */
export function renameComponent(entry: string, typed: string): void {
  const on = open();
  const name = typed.trim();
  if (on === null || name === entry) return;
  const made = componentRenamed(on.from, entry, { name, taken: namesOn(on.panel) });
  if (made.kind === "refused") {
    say(`Not renamed: ${made.why}.`);
    return;
  }
  const isDone = take(made.edits, `rename ${entry} to ${name}`, `renamed: ${entry} is now ${name}`);
  if (isDone) selectEntries([name]);
}

export function placePart(card: PartCard, at: Shift): void {
  const on = open();
  if (on === null) return;
  const name = freshNames(on.panel)(null, card.family);
  const made = componentAdded(on.from, { name, part: card.id, ...at });
  const edits = made.kind === "edit" ? [made.edit] : [];
  const placed = placedByPhoto(edits, on.from, [placeAdded(name)]);
  const words = `Placed ${name}: ${card.title}${placed.words}`;
  if (made.kind === "refused") say(`Not done: ${made.why}.`);
  if (made.kind === "refused" || !take(placed.edits, `place ${name}`, words)) return;
  inHand.value = { kind: "nothing" };
  selectEntries([name]);
}

/** A number as typed in place of the one that the design states; the reader judges it. */
export function stateNumber(
  { entry, written }: { readonly entry: string; readonly written: Written },
  key: string,
  typed: string,
): void {
  const on = open();
  const span = written.keys[key];
  if (on === null || span === undefined) return;
  const text = typed.trim();
  if (isLengthText(text))
    take([replaceValue(on.from, span, text)], `set ${key} of ${entry} to ${text}`);
  else say(`${key}: "${text}" is no length; write 12.5 mm or 3/8 in.`);
}
