// The parts drawer: what the catalogue holds, found by kind, words or dimension, each with its face and its hole; one is taken
// in hand and put down on the sheet.

import { signal } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { extentHeight, extentWidth, grownExtent } from "../../src/geometry/extent.ts";
import { askPanel } from "../core-client.ts";
import { panel } from "../desk.ts";
import { inHand, isDrawerOpen, say } from "./board.ts";
import type { PartCard } from "./panel-messages.ts";
import { matching } from "./part-card.ts";

const cards = signal<readonly PartCard[]>([]);
const search = signal("");

/** More than these are not drawn: another word narrows the search. */
const MOST = 60;

export function PartsDrawer({ toSheet }: { readonly toSheet: () => void }): JSX.Element {
  const close = (): void => {
    isDrawerOpen.value = false;
    toSheet();
  };
  return (
    <section
      class="drawer"
      aria-label="Parts drawer"
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        close();
      }}
    >
      <button type="button" onClick={close}>
        Close the drawer
      </button>
      <Search
        take={(card) => {
          takeInHand(card);
          toSheet();
        }}
      />
    </section>
  );
}

interface SearchProps {
  readonly take: (card: PartCard) => void;
}

/** The field, and what it finds; Enter takes the first one. */
function Search({ take }: SearchProps): JSX.Element {
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    field.current?.focus();
    void loadCards();
  }, []);
  const found = matching(cards.value, search.value);
  return (
    <>
      <label>
        Find a part{" "}
        <input
          ref={field}
          type="search"
          value={search.value}
          placeholder="toggle, lamp 8, 12.2 …"
          onInput={(event) => {
            search.value = event.currentTarget.value;
          }}
          onKeyDown={(event) => {
            const [first] = found;
            if (event.key === "Enter" && first !== undefined) take(first);
          }}
        />
      </label>
      <p class="count">
        {found.length} of {cards.value.length} parts
        {found.length > MOST ? `, the first ${MOST} shown` : ""}
      </p>
      <ul>
        {found.slice(0, MOST).map((card) => (
          <li key={card.id}>
            <Card card={card} take={take} />
          </li>
        ))}
      </ul>
    </>
  );
}

function Card({ card, take }: SearchProps & { readonly card: PartCard }): JSX.Element {
  return (
    <button type="button" onClick={() => take(card)}>
      <Preview card={card} />
      <span>
        <b>{card.id}</b>
        <span class="title">{card.title}</span>
        <small>{card.sizes}</small>
      </span>
    </button>
  );
}

/** Face and hole to one scale in all previews, until a part is too large for it. */
const PREVIEW = 36;

function Preview({ card }: { readonly card: PartCard }): JSX.Element {
  const box = grownExtent(card.box, 1);
  const side = Math.max(PREVIEW, extentWidth(box), extentHeight(box));
  const x = (box.minX + box.maxX - side) / 2;
  const y = -(box.minY + box.maxY + side) / 2;
  return (
    <svg class="preview" viewBox={`${x} ${y} ${side} ${side}`} aria-hidden="true">
      <path class="held-face" d={card.outline} />
      <path class="held-hole" d={card.hole} />
    </svg>
  );
}

async function loadCards(): Promise<void> {
  const answer = await askPanel({ kind: "parts" });
  if (answer.kind === "parts") cards.value = answer.parts;
  if (answer.kind === "failed") say(`The drawer can't be opened: ${answer.why}.`);
}

function takeInHand(card: PartCard): void {
  const layout = panel.value?.layout ?? null;
  if (layout === null) return;
  const { nominal } = layout;
  const half = (low: number, high: number): number => Math.round(low + high) / 2;
  const at = { x: half(nominal.minX, nominal.maxX), y: half(nominal.minY, nominal.maxY) };
  inHand.value = { kind: "part", card, at };
  isDrawerOpen.value = false;
  say(`${card.title} in hand: click where it goes, or arrow keys and Enter. Escape puts it back.`);
}
