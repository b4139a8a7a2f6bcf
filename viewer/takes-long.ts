// Whether something under way has lasted longer than half a second, so that it is worth a word and a way to end it.

import { type ReadonlySignal, useSignal, useSignalEffect } from "@preact/signals";

/** Less than this nobody waits for, ms. */
const PATIENCE = 500;

export function useTakesLong(isUnderWay: ReadonlySignal<boolean>): boolean {
  const isLong = useSignal(false);
  useSignalEffect(() => {
    isLong.value = false;
    if (!isUnderWay.value) return;
    const timer = setTimeout(() => {
      isLong.value = true;
    }, PATIENCE);
    return () => clearTimeout(timer);
  });
  return isLong.value;
}
