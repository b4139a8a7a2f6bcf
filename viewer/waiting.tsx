// What is shown while a design, or a change of it, takes longer than half a second to be read, and the way to end it.

import type { JSX } from "preact";
import { giveUpReading, isReading } from "./desk.ts";
import { useTakesLong } from "./takes-long.ts";

export function Waiting(): JSX.Element | null {
  if (!useTakesLong(isReading)) return null;
  return (
    <p class="waiting">
      <progress aria-label="Reading the design" />{" "}
      <button type="button" class="act" onClick={giveUpReading}>
        Give it up
      </button>
    </p>
  );
}
