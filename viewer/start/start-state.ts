// Whether the page shows where to begin, and how far the guided start is. What was done or skipped is remembered by the
// browser, where it keeps anything.

import { computed, type ReadonlySignal, signal } from "@preact/signals";
import { isServed } from "../files/server-store.ts";
import { store } from "../files/stored-state.ts";
import { isListOpen } from "../panel/list-state.ts";

const isWanted = signal(false);

/** Another design on the desk is a beginning too. */
let openedOver: unknown = null;

/** Where nothing is open yet on a page that brings its examples, and whenever it is asked for. */
export const isStartOpen: ReadonlySignal<boolean> = computed(
  () =>
    !isListOpen.value &&
    (store.value === null ? !isServed() : isWanted.value && store.value === openedOver),
);

export function openStart(): void {
  isListOpen.value = false;
  openedOver = store.peek();
  isWanted.value = true;
}

export function closeStart(): void {
  isWanted.value = false;
}

/** Number of the guide's step; null where it is not shown. */
export const guideStep = signal<number | null>(null);

export function beginGuide(): void {
  guideStep.value = 0;
}

export function endGuide(): void {
  guideStep.value = null;
  try {
    localStorage.setItem(KEY, "over");
  } catch {
    // A browser that keeps nothing asks again.
  }
}

/** Once a browser, unless it was done or skipped there before. */
export function beginGuideOnce(): void {
  try {
    if (localStorage.getItem(KEY) === null) beginGuide();
  } catch {
    beginGuide();
  }
}

const KEY = "consolewright guided start";
