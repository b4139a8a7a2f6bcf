// What is done to the open panel, each as one step of the history: the edits are worked out from the text and the layout, handed
// to the desk, and told in words.

import { replaceValue } from "../../src/design/edit.ts";
import { figureIn, lengthIn } from "../../src/design/length-text.ts";
import type { Written } from "../../src/design/written.ts";
import type { Extent } from "../../src/geometry/extent.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { moveEdits } from "../../src/layout/move-edits.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { lowestCentre } from "../../src/layout/place-moves.ts";
import { MM_PER_INCH } from "../../src/standards/inch.ts";
import { placeAdded, placedByPhoto, placesIn } from "../photo/placed-by-photo.ts";
import { inHand, offer, say, unit } from "./board.ts";
import { componentAdded } from "./component-edits.ts";
import { lengthTyped, sizeTyped } from "./length-typed.ts";
import { movedWords } from "./moved-words.ts";
import { componentRenamed } from "./naming-edits.ts";
import { open } from "./open-panel.ts";
import type { PartCard } from "./panel-messages.ts";
import { freshNames, named, namesOn, selectEntries } from "./panel-names.ts";
import type { Shift } from "./snap.ts";
import { take } from "./told-edit.ts";

/** `more` is said behind what was done. */
export function moveEntries(entries: readonly string[], shift: Shift, more = ""): void {
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
      take(edits, what, `${movedWords({ entries, shift, says }, unit.value)}${words}${more}`);
      return;
    }
    case "choice": {
      const off = offPanel(entries, shift, on.layout);
      if (off !== null) {
        say(`Not moved: ${outcome.why}; ${off}.`);
        return;
      }
      offer.value = { why: outcome.why, title: outcome.title, edits: outcome.free, what };
      say(`Not moved: ${outcome.why}. Offered: ${outcome.title}.`);
    }
  }
}

/** What no place of its own should hold: where a centre would come to lie off the panel, and the panel's size. null: none does. */
function offPanel(entries: readonly string[], shift: Shift, layout: PanelLayout): string | null {
  for (const entry of entries) {
    const low = lowestCentre(entry, layout);
    for (const axis of ["x", "y"] as const) {
      const value = low[axis] + shift[axis];
      const why = offPanelWords(axis, value, layout.nominal);
      if (shift[axis] !== 0 && why !== null) return `${entry} would be at ${why}`;
    }
  }
  return null;
}

/** "x -5 mm, off the panel, which reaches from 0 to 146 mm"; null where it lies on it. */
function offPanelWords(axis: "x" | "y", value: number, nominal: Extent): string | null {
  const most = axis === "x" ? extentWidth(nominal) : extentHeight(nominal);
  if (!Number.isFinite(value) || (value >= 0 && value <= most)) return null;
  const [is, end] = [lengthIn(unit.value, value), lengthIn(unit.value, most)];
  return `${axis} ${is}, off the panel, which reaches from 0 to ${end}`;
}

/** A coordinate as typed, from the lower left corner: moves what is selected by the key that says its place. */
export function typeCoordinate(entry: string, axis: "x" | "y", typed: string): void {
  const on = open();
  if (on === null) return;
  const length = lengthTyped(typed, unit.value);
  if (length.kind === "refused") {
    say(`${axis}: ${length.why}.`);
    return;
  }
  const now = lowestCentre(entry, on.layout)[axis];
  const off = offPanelWords(axis, length.mm, on.layout.nominal);
  if (off !== null) {
    say(`Not moved: ${off}; ${entry} stays at ${axis} ${lengthIn(unit.value, now)}.`);
    return;
  }
  const by = length.mm - now;
  moveEntries([entry], axis === "x" ? { x: by, y: 0 } : { x: 0, y: by }, roundedWords(length));
}

/** Numbers that the page writes are shorter than what a person may type; a thousandth of a millimetre is all that is kept. */
function roundedWords({ text, mm }: { readonly text: string; readonly mm: number }): string {
  const [kept, whole] = [figureIn(unit.value, mm), unit.value === "in" ? mm / MM_PER_INCH : mm];
  return Math.abs(Number(kept) - whole) < LAST_FIGURE
    ? ""
    : `; rounded from ${text} to ${kept} ${unit.value}`;
}

/** Finer than the nanometre that the reader of designs rounds to, in mm and in inches alike. */
const LAST_FIGURE = 1e-8;

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

/** The keys that no text has at zero or less. */
const SIZES: readonly string[] = ["width", "height"];

/** A number as typed in place of the one that the design states; the reader judges it. */
export function stateNumber(
  { entry, written }: { readonly entry: string; readonly written: Written },
  key: string,
  typed: string,
): void {
  const on = open();
  const span = written.keys[key];
  if (on === null || span === undefined) return;
  const read = SIZES.includes(key) ? sizeTyped : lengthTyped;
  const length = read(typed, unit.value);
  if (length.kind === "refused") say(`${key}: ${length.why}.`);
  else take([replaceValue(on.from, span, length.text)], `set ${key} of ${entry} to ${length.text}`);
}
