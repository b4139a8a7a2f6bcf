// What the list's door keeps: whether it is open, and the list that stands in it. Apart from the door, so that others can
// open it.

import { signal } from "@preact/signals";

export const isListOpen = signal(false);
export const list = signal("");

/** A list from elsewhere: pasted or dropped where nothing is open yet. */
export function openWithList(text: string): void {
  list.value = text;
  isListOpen.value = true;
}
