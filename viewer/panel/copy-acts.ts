// Whatever is picked copied to the nearest free place, as one step of the history, and the copies picked.

import { lengthIn } from "../../src/design/length-text.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { panel, texts } from "../desk.ts";
import { gridStep, offer, say, selectedEntries, things, unit } from "./board.ts";
import { thingsCopied } from "./copy-edits.ts";
import { type FreePlace, freePlace } from "./free-place.ts";
import { type Open, open } from "./open-panel.ts";
import { freshNames, named, selectEntries } from "./panel-names.ts";
import { isQuick, isSearching, type PlaceSearch, searchedAside } from "./place-search.ts";
import { withMembers } from "./sheet-things.ts";
import { takeEdit } from "./told-edit.ts";

export function copySelection(): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  if (isSearching.value) {
    say("Still looking for a free place for the copies before: a moment, or give it up.");
    return;
  }
  const search = searchFor(on, entries);
  if (isQuick(search)) {
    const { ids, layout, step } = search;
    copyTo(freePlace(ids, layout, step), on, entries);
  } else void copyOnceFound(search, on, entries);
}

async function copyOnceFound(
  search: PlaceSearch,
  on: Open,
  entries: readonly string[],
): Promise<void> {
  const searched = await searchedAside(search);
  const isAsBefore =
    panel.value?.layout === on.layout && texts.value.get(on.from.file) === on.from.text;
  if (searched.kind === "given-up")
    say("Not copied: looking for a free place was given up; the panel is as it was.");
  else if (!isAsBefore)
    say("Not copied: the panel has changed while a free place was looked for. Copy again.");
  else copyTo(searched.place, on, entries);
}

function searchFor({ layout }: Open, entries: readonly string[]): PlaceSearch {
  const whole = withMembers(entries, layout.design);
  const ids = things.value.filter(({ entry }) => whole.includes(entry)).map(({ id }) => id);
  return { ids: new Set(ids), layout, step: gridStep.value };
}

/** `place`: null where nothing of them lies on the sheet. */
function copyTo(place: FreePlace | null, on: Open, entries: readonly string[]): void {
  const { from, layout } = on;
  const nameOf = freshNames(on.panel);
  const nameLike = (entry: string): string => nameOf(null, entry.replace(/-\d+$/, ""));
  const words = placeWords(place);
  const shift = place?.shift ?? { x: 0, y: 0 };
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

/** Where no place is clear of all else. */
function placeWords(place: FreePlace | null): string {
  if (place === null || place.isFree) return "";
  const { box } = place;
  const size = `${lengthIn(unit.value, extentWidth(box))} by ${lengthIn(unit.value, extentHeight(box))}`;
  return `. The sheet has no place of ${size} that is clear of all else: it stands where it is seen, and is to be moved`;
}
