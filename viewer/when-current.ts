// When an edit may be made of what lies in the hand: as soon as what is seen is the reading of the text, and, of steps by
// keys, when the hand rests.

import { effect, type ReadonlySignal } from "@preact/signals";
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

/** Behind whatever is in hand or waits: a step back takes that back first. Where a reading was given up nothing is waited for. */
export function inTurn(act: () => void): void {
  settleAll();
  if (waiting > 0 && isReading.value) whenRead(act);
  else act();
}
