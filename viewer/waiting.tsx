// What is shown while a design, or a change of it, takes longer than half a second to be read, and the way to end it.

import { useSignal, useSignalEffect } from "@preact/signals";
import type { JSX } from "preact";
import { giveUpReading, isReading } from "./desk.ts";

/** Less than this nobody waits for, ms. */
const PATIENCE = 500;

export function Waiting(): JSX.Element | null {
  const isLong = useSignal(false);
  useSignalEffect(() => {
    if (!isReading.value) {
      isLong.value = false;
      return;
    }
    const timer = setTimeout(() => {
      isLong.value = true;
    }, PATIENCE);
    return () => clearTimeout(timer);
  });
  if (!isLong.value) return null;
  return (
    <p class="waiting">
      <progress aria-label="Reading the design" />{" "}
      <button type="button" class="act" onClick={giveUpReading}>
        Give it up
      </button>
    </p>
  );
}
