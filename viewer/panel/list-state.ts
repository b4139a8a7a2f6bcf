// What the list's door keeps: whether it is open, the list that stands in it, and what was found in it. Apart from the door, so
// that others can open it, and so that what was found stays in sight beside the panel that was made.

import { signal } from "@preact/signals";
import type { PlacedFinding } from "../core-messages.ts";

export const isListOpen = signal(false);
export const list = signal("");
export const found = signal<readonly PlacedFinding[]>([]);
/** The design that was made of the list; null: none was. */
export const madeOfList = signal<string | null>(null);

/** A list from elsewhere: pasted or dropped where nothing is open yet. */
export function openWithList(text: string): void {
  list.value = text;
  isListOpen.value = true;
}
