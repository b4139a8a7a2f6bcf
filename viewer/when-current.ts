// When an edit may be made of what lies in the hand: as soon as what is seen is the reading of the text, and, of steps by
// keys, when the hand rests.

import { effect } from "@preact/signals";
import { isCurrent } from "./desk.ts";

/** Steps of the arrow keys become one step of the history when the hand rests this long, ms. */
export const HAND_RESTS = 350;

/** At once, or as soon as the picture is that of the text; of several that wait, each when the one before it has been read. */
export function whenCurrent(act: () => void): void {
  let isDone = false;
  const stop = effect(() => {
    if (!isCurrent.value || isDone) return;
    isDone = true;
    queueMicrotask(() => {
      stop();
      // Another that waited may have made its edit first.
      if (isCurrent.value) act();
      else whenCurrent(act);
    });
  });
}
