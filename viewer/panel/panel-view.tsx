// One fascia to be worked on: the sheet, what is shown on it, the parts drawer, and the ticket of what is selected.

import type { JSX } from "preact";
import { useRef } from "preact/hooks";
import type { PanelReading } from "../core-messages.ts";
import { choosePanel, findings, panel, panels, progress, unread } from "../desk.ts";
import { unreadWords } from "../kept-panels.ts";
import { LayerList } from "../layer-list.tsx";
import { calledAmong } from "../panel-called.ts";
import { PhotoBehindDoor, PhotoButton, TakingTick } from "../photo/photo-door.tsx";
import { behindDoor } from "./behind-door.tsx";
import { type Extra, extras, isDrawerOpen, isSectionShown, showExtra, sight } from "./board.ts";
import { BoardView } from "./board-view.tsx";
import { FoundInList } from "./list-found.tsx";
import { isListOpen } from "./list-state.ts";
import { SectionPane } from "./section-pane.tsx";
import { Ticket } from "./ticket.tsx";
import "./unread.css";

const ListDoor = behindDoor(isListOpen, async () => (await import("./list-door.tsx")).ListDoor);
const PartsDrawer = behindDoor(
  isDrawerOpen,
  async () => (await import("./parts-drawer.tsx")).PartsDrawer,
);

export function PanelView(): JSX.Element {
  const view = useRef<HTMLDivElement>(null);
  const focusOn = (selector: string): void =>
    view.current?.querySelector<HTMLElement>(selector)?.focus();
  const shown = panel.value;
  // Nothing is open but the list's door: there is nothing to work on yet.
  if (progress.value.kind === "empty")
    return (
      <div class="panel-view">
        <ListDoor />
      </div>
    );
  if (shown === null && progress.value.kind === "reading")
    return (
      <div class="panel-view">
        <ListDoor />
        <p class="no-drawing">Reading {progress.value.what} …</p>
      </div>
    );
  return (
    <div class="panel-view" ref={view}>
      <SheetBar reading={shown} />
      <ListDoor />
      <FoundInList />
      <div class="sheets">
        <PartsDrawer toSheet={() => focusOn(".board")} />
        <PhotoBehindDoor toSheet={() => focusOn(".board")} />
        <div class="sheet-column">
          <Sheet
            reading={shown}
            openDrawer={() => {
              isDrawerOpen.value = true;
            }}
            toTicket={() => focusOn(".ticket input, .ticket button")}
          />
          <SectionPane />
        </div>
      </div>
      <div class="ticket-place">
        <Ticket />
      </div>
    </div>
  );
}

function Sheet(props: {
  readonly reading: PanelReading | null;
  readonly openDrawer: () => void;
  readonly toTicket: () => void;
}): JSX.Element | null {
  const { reading, openDrawer, toTicket } = props;
  if (reading === null) return <p class="no-drawing">{nothingWords()}</p>;
  const { layout, picture } = reading;
  const why = unread.value;
  if (layout === null || picture === null)
    return <p class="no-drawing">{reading.title} could not be laid out: see its faults.</p>;
  return (
    <div class={why === null ? "sheet-place" : "sheet-place unread"}>
      {why !== null && (
        <p class="why-unread" role="status">
          {capital(unreadWords(why, reading.file))}. The drawing is that of the last text that could
          be.
        </p>
      )}
      <BoardView
        reading={reading}
        layout={layout}
        picture={picture}
        openDrawer={openDrawer}
        toTicket={toTicket}
      />
    </div>
  );
}

/** Why there is no panel to draw. */
function nothingWords(): string {
  const fault = findings.value.find(({ finding }) => finding.severity === "fault");
  if (fault === undefined) return "There is no panel to draw.";
  const { message, span } = fault.finding;
  return `${capital(unreadWords({ message, file: span.file, line: fault.line }, ""))}.`;
}

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

const EXTRAS: readonly { readonly name: Extra; readonly words: string }[] = [
  { name: "rail", words: "Rails" },
  { name: "spanner", words: "Room for spanners" },
  { name: "hand", words: "Room for hands" },
];

function SheetBar({ reading }: { readonly reading: PanelReading | null }): JSX.Element {
  return (
    <div class="sheet-bar">
      <PanelChoice />
      <button
        type="button"
        aria-expanded={isDrawerOpen.value}
        onClick={() => {
          isDrawerOpen.value = !isDrawerOpen.value;
        }}
      >
        Parts drawer <kbd>P</kbd>
      </button>
      <PhotoButton />
      <button
        type="button"
        onClick={() => {
          sight.value = null;
        }}
      >
        Whole panel <kbd>0</kbd>
      </button>
      <ShowMenu />
      <label>
        <input
          type="checkbox"
          checked={isSectionShown.value}
          onChange={(event) => {
            isSectionShown.value = event.currentTarget.checked;
          }}
        />{" "}
        Section
      </label>
      <TakingTick />
      <TwiceUsed reading={reading} />
    </div>
  );
}

/** Which layers are shown, and what is kept free round components. */
function ShowMenu(): JSX.Element {
  return (
    <details
      class="show"
      name="page-menu"
      onKeyDown={(event) => {
        if (event.key === "Escape") event.currentTarget.open = false;
      }}
    >
      <summary>Show</summary>
      <div>
        <LayerList />
        <fieldset>
          <legend>Kept free</legend>
          {EXTRAS.map(({ name, words }) => (
            <label key={name}>
              <input
                type="checkbox"
                checked={extras.value.has(name)}
                onChange={(event) => showExtra(name, event.currentTarget.checked)}
              />{" "}
              {words}
            </label>
          ))}
        </fieldset>
      </div>
    </details>
  );
}

/** A file that stands twice in a console is changed in both places at once. */
function TwiceUsed({ reading }: { readonly reading: PanelReading | null }): JSX.Element | null {
  const others = panels.value.filter(
    ({ file, name }) => file === reading?.file && name !== reading.name,
  );
  if (reading === null || others.length === 0) return null;
  return (
    <p class="twice">
      {reading.file} stands in the console {others.length + 1} times: what is changed here changes
      in {others.map(({ name }) => name).join(", ")} too.
    </p>
  );
}

function PanelChoice(): JSX.Element | null {
  if (panels.value.length < 2) return null;
  return (
    <label class="panel-choice">
      Panel
      <select
        value={panel.value?.name ?? ""}
        onChange={(event) => choosePanel(event.currentTarget.value)}
      >
        {panels.value.map((one) => (
          <option key={one.name} value={one.name}>
            {calledAmong(one, panels.value)}
          </option>
        ))}
      </select>
    </label>
  );
}
