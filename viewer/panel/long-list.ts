// A list that is longer than one that is read: the whole lines that have room, and the rest. Pure; the two together are the list,
// to the last character.

import { MOST_LIST_CHARACTERS } from "../../src/design/list-caps.ts";

/** More lines than any panel has parts; a field that holds more of them stops the page while they are set. */
export const MOST_LIST_LINES = 2000;

export interface SplitList {
  readonly head: string;
  readonly rest: string;
}

export function splitList(whole: string): SplitList {
  let end = 0;
  for (let lines = 0; lines < MOST_LIST_LINES && end < whole.length; lines += 1) {
    const feed = whole.indexOf("\n", end);
    const next = feed < 0 ? whole.length : feed + 1;
    if (next > MOST_LIST_CHARACTERS) break;
    end = next;
  }
  return { head: whole.slice(0, end), rest: whole.slice(end) };
}

/** A last line without its end is one too. */
export function lineCount(text: string): number {
  let count = 0;
  for (let at = 0; at < text.length; count += 1) {
    const feed = text.indexOf("\n", at);
    at = feed < 0 ? text.length : feed + 1;
  }
  return count;
}
