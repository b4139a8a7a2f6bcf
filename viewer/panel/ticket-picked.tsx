// The ticket of what is selected: what the design says of its place and sizes, with the numbers to write over, and what can be
// done with it.

import type { JSX } from "preact";
import { DRAG_BY_RULE, dragOfMarking } from "../../src/design/drag-table.ts";
import { lengthIn } from "../../src/design/length-text.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { type MovableThing, movableThings } from "../../src/layout/movable-things.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { heldBy } from "../../src/layout/place-moves.ts";
import { panel } from "../desk.ts";
import { useTakesLong } from "../takes-long.ts";
import { selectedEntries, selectedThings, unit } from "./board.ts";
import { renameComponent } from "./edit-acts.ts";
import { LegendField } from "./legend-field.tsx";
import { NumberField } from "./number-field.tsx";
import { giveUpSearch, isSearching } from "./place-search.ts";
import type { SheetThing } from "./sheet-things.ts";
import { Deeds } from "./ticket-deeds.tsx";
import { Coordinates, StatedAxis } from "./ticket-place.tsx";
import { Sizes } from "./ticket-sizes.tsx";
import { toBoard } from "./to-board.ts";

export function Picked(): JSX.Element {
  const isLong = useTakesLong(isSearching);
  return (
    <>
      <Sentence />
      {isLong ? <Searching /> : <Deeds />}
    </>
  );
}

const Searching = (): JSX.Element => (
  <div class="deeds searching">
    <progress aria-label="Looking for a free place" />
    <span role="status">Looking for a free place for the copies …</span>
    <button
      type="button"
      class="act"
      onClick={() => {
        giveUpSearch();
        toBoard();
      }}
    >
      Give it up
    </button>
  </div>
);

function Sentence(): JSX.Element | null {
  const entries = selectedEntries.value;
  const [first] = selectedThings.value;
  const layout = panel.value?.layout ?? null;
  if (first === undefined || layout === null) return null;
  if (entries.length > 1)
    return (
      <p>
        <b>{entries.length} selected:</b> {entries.slice(0, 8).join(", ")}
        {entries.length > 8 ? " …" : ""}
      </p>
    );
  const places = placesOf(first, layout);
  const [only, ...others] = places;
  return (
    <div class="sentence">
      <p>
        {first.kind === "component" ? <NameField thing={first} /> : <b>{first.entry}</b>}
        {first.id === first.entry ? "" : ` (here ${first.id})`}
        {first.kind === "component" ? " " : ": "}
        {first.words}, {sizeWords(first)}
      </p>
      <LegendField entry={first.entry} layout={layout} />
      {places.map((place) => (
        <p key={place.end}>
          {place.end === "at" ? "" : `${place.end} `}
          <StatedAxis thing={place} axis="across" />
          <StatedAxis thing={place} axis="along" />
        </p>
      ))}
      <Sizes thing={first} layout={layout} />
      {places.length === 0 && <p class="held">{heldWhole(first, layout)} </p>}
      {only !== undefined && others.length === 0 && (
        <Coordinates thing={only} turn={turnOf(first, layout)} />
      )}
    </div>
  );
}

const sizeWords = ({ box }: SheetThing): string =>
  `${lengthIn(unit.value, extentWidth(box))} by ${lengthIn(unit.value, extentHeight(box))}`;

/** Of a pattern the one place that its members share. */
function placesOf(thing: SheetThing, layout: PanelLayout): readonly MovableThing[] {
  return movableThings(layout).filter(({ id }) => id === thing.id);
}

/** null where it has no angle of its own. */
function turnOf(
  { id, entry, kind }: SheetThing,
  { components, design }: PanelLayout,
): number | null {
  const marking = design.markings.find((one) => one.id === entry);
  if (marking?.kind === "legend")
    return marking.legends.find((legend) => legend !== null)?.turn ?? 0;
  return kind === "component" ? (components.find((one) => one.id === id)?.common.turn ?? 0) : null;
}

/** What has no place of its own: what holds it. */
function heldWhole({ entry }: SheetThing, { design }: PanelLayout): string {
  const marking = design.markings.find((one) => one.id === entry);
  const drag = marking === undefined ? DRAG_BY_RULE : dragOfMarking(marking);
  return drag?.kind === "held" ? heldBy(drag) : "";
}

function NameField({ thing }: { readonly thing: SheetThing }): JSX.Element {
  return (
    <NumberField
      label="name"
      value={thing.entry}
      change={(typed) => renameComponent(thing.entry, typed)}
    />
  );
}
