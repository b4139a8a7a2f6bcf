// Several things picked by the keyboard: what is kept stays picked while Tab goes on to others. A pick by the pointer, or of all,
// begins anew.

import { selection } from "../desk.ts";
import { say } from "./board.ts";

let kept: readonly string[] = [];

/** Of these, those that are still picked. */
const keptNow = (): readonly string[] => {
  const isStill = kept.every((id) => selection.value.includes(id));
  return isStill ? kept : [];
};

/** The last that was picked is kept, or let go again. */
export function keepPick(): void {
  const last = selection.value.at(-1);
  const before = keptNow();
  if (last === undefined) say("Pick something first: Tab goes from thing to thing.");
  else if (before.includes(last)) {
    kept = before.filter((id) => id !== last);
    say(`${last} is not kept any more.`);
  } else {
    kept = [...before, last];
    say(`${last} stays picked: Tab goes on, and what comes next is picked with it.`);
  }
}

/** What Tab has come to, with what is kept. */
export function pickWithKept(id: string): void {
  const before = keptNow();
  kept = before;
  selection.value = [...before.filter((one) => one !== id), id];
}
