// The ticket under the sheet: of what is selected, with whatever is offered, what was just done in words, and where it
// goes while it is dragged. Nothing selected: how to pick something, in one line. What is more than a line lies over the sheet.

import type { JSX } from "preact";
import { lengthIn } from "../../src/design/length-text.ts";
import type { Extent } from "../../src/geometry/extent.ts";
import { panel } from "../desk.ts";
import { selectionWords, takeOffer } from "./acts.ts";
import { drag, offer, said, selectedEntries, selectedThings, unit } from "./board.ts";
import { deeds } from "./deeds-door.ts";
import type { SheetThing } from "./sheet-things.ts";
import type { Shift } from "./snap.ts";
import "./ticket.css";

export function Ticket(): JSX.Element {
  const Picked = deeds.value?.Picked ?? null;
  const isPicked = selectedEntries.value.length > 0;
  return (
    <section class={isPicked ? "ticket picked" : "ticket"} aria-label="What is selected">
      {!isPicked && said.value === "" && <Hint />}
      <Offered />
      {isPicked && Picked !== null && <Picked />}
      <div class="lately">
        <UnderWay />
        <p class={isInTicket() ? "said only-read" : "said"} role="status" aria-live="polite">
          {said.value}
        </p>
      </div>
    </section>
  );
}

/** What is said of a pick stands in the ticket already: for those who see it once is enough. */
const isInTicket = (): boolean =>
  selectedEntries.value.length > 0 && said.value === selectionWords();

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
  <p class="hint">Click or tap what is to be changed; by keys, Tab on the sheet.</p>
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
