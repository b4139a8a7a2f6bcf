// What the list's door keeps: whether it is open, the list that stands in it, and what was found in it. Apart from the door, so that
// others can open it, and so that what was found stays in sight beside the panel that was made.

import { signal } from "@preact/signals";
import type { PlacedFinding } from "../core-messages.ts";
import { splitList } from "./long-list.ts";

export const isListOpen = signal(false);
/** What stands in the field, and is read. */
export const list = signal("");
/** Of a list that is longer than one that is read, what comes behind the field's lines; empty elsewhere. */
export const restOfList = signal("");
export const found = signal<readonly PlacedFinding[]>([]);
/** The design that was made of the list; null: none was. */
export const madeOfList = signal<string | null>(null);

/** A list from elsewhere: pasted or dropped where nothing is open yet. */
export function openWithList(text: string): void {
  takeList(text);
  isListOpen.value = true;
}

/** In the place of what was there: as much as has room in the field, the rest beside it. */
export function takeList(whole: string): void {
  const { head, rest } = splitList(whole);
  list.value = head;
  restOfList.value = rest;
}
