// What can be done to the open panel without the reader of texts, and what is selected in words. What works its edits out from
// the text is in `edit-acts.ts`.

import { lengthIn } from "../../src/design/length-text.ts";
import type { Remedy } from "../../src/diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { isCurrent } from "../desk.ts";
import { offer, say, selectedEntries, selectedThings, unit } from "./board.ts";
import { STILL_READING } from "./open-panel.ts";
import { take } from "./told-edit.ts";

export function takeOffer(): void {
  const now = offer.value;
  offer.value = null;
  if (now !== null) take(now.edits, now.what, now.title);
}

export function applyRemedy(remedy: Remedy): void {
  // It was worked out from a text that is not the newest any more.
  if (!isCurrent.value) say(STILL_READING);
  else take(remedy.edits, remedy.title, `Done: ${remedy.title}`);
}

/** Where the middle of what is selected lies, and how large it is: for those who can't see it. */
export function selectionWords(): string {
  const [first] = selectedThings.value;
  if (first === undefined) return "nothing selected";
  // As the ticket counts them: members of one row are one.
  const { length } = selectedEntries.value;
  if (length > 1) return `${length} selected`;
  const { id, words, box } = first;
  const [width, height] = [extentWidth(box), extentHeight(box)];
  return `${id}, ${words}, ${lengthIn(unit.value, width)} by ${lengthIn(unit.value, height)}`;
}
