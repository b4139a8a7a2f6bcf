// The ticket under the sheet: of what is selected, with whatever is offered, what was just done in words, and where it
// goes while it is dragged. Nothing selected:
// how to pick something.

import type { JSX } from "preact";
import { lengthIn } from "../../src/design/length-text.ts";
import type { Extent } from "../../src/geometry/extent.ts";
import { panel } from "../desk.ts";
import { takeOffer } from "./acts.ts";
import { drag, offer, said, selectedEntries, selectedThings, unit } from "./board.ts";
import { deeds } from "./deeds-door.ts";
import type { SheetThing } from "./sheet-things.ts";
import type { Shift } from "./snap.ts";
import "./ticket.css";

export function Ticket(): JSX.Element {
  const Picked = deeds.value?.Picked ?? null;
  const isPicked = selectedEntries.value.length > 0;
  return (
    <section class="ticket" aria-label="What is selected">
      {!isPicked && <Hint />}
      <Offered />
      {isPicked && Picked !== null && <Picked />}
      <div class="lately">
        <UnderWay />
        <p class="said" role="status" aria-live="polite">
          {said.value}
        </p>
      </div>
    </section>
  );
}

/** Where the first of what is dragged is by now. For the eye alone: it changes with every movement of the hand. */
function UnderWay(): JSX.Element | null {
  const [first] = selectedThings.value;
  const now = drag.value;
  const layout = panel.value?.layout ?? null;
  if (now === null || first === undefined || layout === null) return null;
  return (
    <p class="under-way" aria-hidden="true">
      <b>{underWayWords(first, now.shift, layout.nominal)}</b>
    </p>
  );
}

function underWayWords({ id, at }: SheetThing, shift: Shift, { minX, minY }: Extent): string {
  const words = (value: number): string => lengthIn(unit.value, value);
  const x = words(at.x + shift.x - minX);
  const y = words(at.y + shift.y - minY);
  const across = `${words(Math.abs(shift.x))} to the ${shift.x < 0 ? "left" : "right"}`;
  const along = `${words(Math.abs(shift.y))} ${shift.y < 0 ? "down" : "up"}`;
  return `${id} to x ${x}, y ${y}: ${across}, ${along}`;
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
