// When an edit may be made of what lies in the hand: as soon as what is seen is the reading of the text, and, of steps by
// keys, when the hand rests.

import { computed, effect, type ReadonlySignal } from "@preact/signals";
import { isCurrent, isDrawn, isReading, settleAll } from "./desk.ts";

/** Steps of the arrow keys become one step of the history when the hand rests this long, ms. */
export const HAND_RESTS = 350;

/** At once, or as soon as the picture is that of the text; of several that wait, each when the one before it has been read. */
export function whenCurrent(act: () => void): void {
  // Before whoever asked goes on: what is picked next, or taken back, must not come first.
  if (isCurrent.peek()) act();
  else whenRead(act);
}

/** Acts that wait for a reading. */
let waiting = 0;

function whenRead(act: () => void): void {
  waiting += 1;
  onceRead(() => {
    waiting -= 1;
    // Another that waited may have made its edit first.
    whenCurrent(act);
  });
}

const onceRead = (act: () => void): void => onceTrue(isCurrent, act);

/** For what only follows the picture and edits nothing: nobody comes behind it. */
export const onceDrawn = (act: () => void): void => onceTrue(isDrawn, act);

function onceTrue(state: ReadonlySignal<boolean>, act: () => void): void {
  let isDone = false;
  const stop = effect(() => {
    if (!state.value || isDone) return;
    isDone = true;
    queueMicrotask(() => {
      stop();
      act();
    });
  });
}

/** The last that waits for code to come; null: nothing does. */
let line: Promise<void> | null = null;

/** Behind all that waits for code of its own, in the order in which it was asked for. */
export function inLine(coming: Promise<() => void>): void {
  const before = line ?? Promise.resolve();
  const mine = before.then(() => coming).then((act) => act());
  const done = mine
    .catch(() => undefined)
    .then(() => {
      if (line === done) line = null;
    });
  line = done;
}

/** Behind whatever is in hand or waits: a step back takes that back first. Where a reading was given up nothing is waited for. */
export function inTurn(act: () => void): void {
  settleAll();
  if (line === null) behindReading(act);
  else inLine(Promise.resolve(() => behindReading(act)));
}

const behindReading = (act: () => void): void => {
  if (waiting > 0 && isReading.value) whenRead(act);
  else act();
};

/** When all that was in hand or waited is in the texts. What waits for a reading that is given up is not waited for. */
export async function handsEmpty(): Promise<void> {
  settleAll();
  await line;
  while (waiting > 0 && isReading.peek()) {
    await new Promise<void>((done) => onceTrue(atRest, done));
    // Whoever has waited longer goes first.
    await new Promise((done) => setTimeout(done));
  }
}

const atRest = computed(() => !isReading.value);
