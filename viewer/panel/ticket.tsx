// The ticket under the sheet: of what is selected, with whatever is offered, and what was just done in words. Nothing selected:
// how to pick something.

import type { JSX } from "preact";
import { takeOffer } from "./acts.ts";
import { offer, said, selectedEntries } from "./board.ts";
import { deeds } from "./deeds-door.ts";
import "./ticket.css";

export function Ticket(): JSX.Element {
  const Picked = deeds.value?.Picked ?? null;
  const isPicked = selectedEntries.value.length > 0;
  return (
    <section class="ticket" aria-label="What is selected">
      {!isPicked && <Hint />}
      <Offered />
      {isPicked && Picked !== null && <Picked />}
      <p class="said" role="status" aria-live="polite">
        {said.value}
      </p>
    </section>
  );
}

const Hint = (): JSX.Element => (
  <p class="hint">
    Pick a component, a marking, a window or a screw: click it, or press Tab on the sheet. Arrow
    keys nudge, with Shift ten times as far; A keeps what is picked while Tab picks more; P takes a
    part from the drawer.
  </p>
);

function Offered(): JSX.Element | null {
  const now = offer.value;
  if (now === null) return null;
  return (
    <p class="offer" role="alert">
      {now.why}.{" "}
      <button type="button" onClick={takeOffer}>
        {now.title}
      </button>{" "}
      <button
        type="button"
        onClick={() => {
          offer.value = null;
        }}
      >
        Leave it
      </button>
    </p>
  );
}
