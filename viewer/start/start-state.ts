// Whether the page shows where to begin, and how far the guided start is. What was done or skipped is remembered by the
// browser, where it keeps anything.

import { computed, type ReadonlySignal, signal } from "@preact/signals";
import { store } from "../files/stored-state.ts";
import { isListOpen } from "../panel/list-state.ts";

/** The design over which it was asked for; null: it was not. */
const wantedOver = signal<{ readonly store: unknown } | null>(null);

/** Number of the guide's step; null where it is not shown. */
export const guideStep = signal<number | null>(null);

/** Another design on the desk is a beginning too, and ends it. */
export const isStartOpen: ReadonlySignal<boolean> = computed(
  () => !isListOpen.value && wantedOver.value !== null && wantedOver.value.store === store.value,
);

export function openStart(): void {
  isListOpen.value = false;
  // Nothing that it points at is shown here; it is not over, and begins with the next example.
  guideStep.value = null;
  wantedOver.value = { store: store.peek() };
}

export function closeStart(): void {
  wantedOver.value = null;
}

/** The design that is shown round. */
let guided: unknown = null;

/** With another design on the desk its steps are those of nothing. */
export const isGuided = (): boolean => store.value === guided;

export function beginGuide(): void {
  guided = store.peek();
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
