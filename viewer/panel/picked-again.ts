// What was picked before a deed that picks something else (a copy, a row made of several, a new name) is picked again when the
// deed is taken back, and what the deed has picked when it is done again. What the person has picked since is left alone. Who steps
// by a button reads under the sheet what was taken back, too: what was said of the deed itself is true no more.

import { effect } from "@preact/signals";
import { history, selection } from "../desk.ts";
import type { History, Step } from "../history.ts";
import { say } from "./board.ts";

interface Picked {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

const pickedBy = new WeakMap<Step, Picked>();

/** Picks what the step that was just made has made. */
export function pickByLastStep(after: readonly string[]): void {
  const step = history.value.done.at(-1);
  if (step !== undefined) pickedBy.set(step, { before: selection.value, after });
  selection.value = after;
}

let last: History = history.value;

effect(() => {
  const now = history.value;
  const before = last;
  last = now;
  const back = before.done.at(-1);
  const forth = before.undone[0];
  if (back !== undefined && now.undone[0] === back) {
    pickAgain(back, "after", "before");
    say(`Taken back: ${back.what}.`);
  } else if (forth !== undefined && now.done.at(-1) === forth) {
    pickAgain(forth, "before", "after");
    say(`Done again: ${forth.what}.`);
  }
});

function pickAgain(step: Step, from: keyof Picked, to: keyof Picked): void {
  const picked = pickedBy.get(step);
  if (picked !== undefined && isSame(selection.peek(), picked[from])) selection.value = picked[to];
}

const isSame = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((id, index) => id === b[index]);
