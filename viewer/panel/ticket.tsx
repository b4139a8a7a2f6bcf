// The ticket of what is selected, under the sheet: what the design says of its place, as a sentence with the numbers to
// write over, and what can be done with it. Nothing selected: what can be done with the sheet.

import type { JSX } from "preact";
import { DRAG_BY_RULE, dragOf, dragOfMarking } from "../../src/design/drag-table.ts";
import { figureIn, lengthIn } from "../../src/design/length-text.ts";
import type { AxisPlace } from "../../src/design/panel-design.ts";
import type { Span } from "../../src/diagnostics/finding.ts";
import { type MovableThing, movableThings } from "../../src/layout/movable-things.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { heldBy, lowestCentre } from "../../src/layout/place-moves.ts";
import { MM_PER_INCH } from "../../src/standards/inch.ts";
import { panel, texts } from "../desk.ts";
import {
  copySelection,
  makePattern,
  moveSelection,
  removeSelection,
  renameComponent,
  spaceSelection,
  stateNumber,
  takeOffer,
  turnSelection,
} from "./acts.ts";
import {
  componentEntries,
  offer,
  said,
  say,
  selectedEntries,
  selectedThings,
  unit,
} from "./board.ts";
import { LegendField } from "./legend-field.tsx";
import type { SheetThing } from "./sheet-things.ts";
import "./ticket.css";

export function Ticket(): JSX.Element {
  return (
    <section class="ticket" aria-label="What is selected">
      <Sentence />
      <Offered />
      <Deeds />
      <p class="said" role="status" aria-live="polite">
        {said.value}
      </p>
    </section>
  );
}

function Sentence(): JSX.Element {
  const entries = selectedEntries.value;
  const [first] = selectedThings.value;
  const layout = panel.value?.layout ?? null;
  if (first === undefined || layout === null)
    return (
      <p class="hint">
        Pick a component, a marking, a window or a screw: click it, or press Tab on the sheet. Arrow
        keys nudge, with Shift ten times as far; P takes a part from the drawer.
      </p>
    );
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
        {first.id === first.entry ? "" : ` (here ${first.id})`}: {first.words}{" "}
        {first.kind === "component" && <LegendField entry={first.entry} layout={layout} />}
      </p>
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

/** Of a pattern the one place that its members share. */
function placesOf(thing: SheetThing, layout: PanelLayout): readonly MovableThing[] {
  return movableThings(layout).filter(({ id }) => id === thing.id);
}

function turnOf({ id }: SheetThing, { components, design }: PanelLayout): number {
  const marking = design.markings.find((one) => one.id === id);
  if (marking?.kind === "legend") return marking.legend.turn;
  return components.find((one) => one.id === id)?.turn ?? 0;
}

/** What has no place of its own: what holds it. */
function heldWhole({ id }: SheetThing, { design }: PanelLayout): string {
  const marking = design.markings.find((one) => one.id === id);
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

/** Of a window, as the design says them. */
function Sizes(props: {
  readonly thing: SheetThing;
  readonly layout: PanelLayout;
}): JSX.Element | null {
  const { thing, layout } = props;
  const marking = layout.design.markings.find(({ id }) => id === thing.id);
  if (marking?.kind !== "window") return null;
  const { written } = marking;
  return (
    <p>
      {["width", "height", "corner"].flatMap((key) =>
        written.keys[key] === undefined
          ? []
          : [
              <NumberField
                key={key}
                label={key}
                value={textIn(written.keys[key])}
                change={(typed) => stateNumber({ entry: thing.entry, written }, key, typed)}
              />,
            ],
      )}
    </p>
  );
}

const textIn = (span: Span | undefined): string =>
  span === undefined ? "" : (texts.value.get(span.file) ?? "").slice(span.start, span.end);

interface AxisProps {
  readonly thing: MovableThing;
  readonly axis: "across" | "along";
}

/** One statement in the design's own words, its number to be written over. */
function StatedAxis({ thing, axis }: AxisProps): JSX.Element {
  const place = thing.place[axis];
  const drag = dragOf(place);
  if (drag.kind === "held") return <span class="held">{heldWords(place, axis)} </span>;
  const { entry } = thing;
  const { written } = thing.place;
  const words = place.kind === "beside" ? `${place.key} ${place.neighbour}, ${drag.key}` : drag.key;
  return (
    <NumberField
      label={words}
      value={textIn(written.keys[drag.key])}
      change={(typed) => stateNumber({ entry, written }, drag.key, typed)}
    />
  );
}

function heldWords(place: AxisPlace, axis: "across" | "along"): string {
  switch (place.kind) {
    case "centre":
      return axis === "across" ? "in the middle across" : "in the middle of the height";
    case "low-edge":
      return axis === "across" ? "at the left edge" : "at the lower edge";
    case "high-edge":
      return axis === "across" ? "at the right edge" : "at the upper edge";
    case "in-line":
      return axis === "across"
        ? `in line with ${place.neighbour}`
        : `level with ${place.neighbour}`;
    case "from-low":
    case "from-high":
    case "beside":
      return "";
  }
}

/** Where it stands from the lower left corner, where the design says it otherwise; a new number moves it by the key that does. */
function Coordinates(props: {
  readonly thing: MovableThing;
  readonly turn: number;
}): JSX.Element | null {
  const { thing, turn } = props;
  const layout = panel.value?.layout ?? null;
  if (layout === null) return null;
  const low = lowestCentre(thing.entry, layout);
  const axes = (["x", "y"] as const).filter((axis) => !isStated(thing, axis));
  return (
    <p class="coordinates">
      {axes.length > 0 && "that is "}
      {axes.map((axis) => (
        <NumberField
          key={axis}
          label={`${axis}, from the ${axis === "x" ? "left" : "bottom"}`}
          value={lengthIn(unit.value, low[axis])}
          change={(typed) => {
            const value = millimetresOf(typed);
            if (value === null) {
              say(`${axis}: "${typed}" is no length; write 12.5 mm or 0.5 in.`);
              return;
            }
            const by = value - low[axis];
            moveSelection(axis === "x" ? { x: by, y: 0 } : { x: 0, y: by });
          }}
        />
      ))}
      <small>{turn === 0 ? "" : `turned ${figureIn("mm", turn)}°`}</small>
    </p>
  );
}

function isStated({ place }: MovableThing, axis: "x" | "y"): boolean {
  const said = axis === "x" ? place.across : place.along;
  return said.kind === "from-low" && said.key === axis;
}

const MM_PER_CM = 10;

/** Plain numbers in the file's unit, or with a unit of their own. */
function millimetresOf(typed: string): number | null {
  const found = /^([+-]?\d*\.?\d+) ?(mm|cm|in|")?$/.exec(typed.trim());
  if (found === null) return null;
  const value = Number(found[1]);
  const own = found[2] ?? unit.value;
  return own === "mm" ? value : own === "cm" ? value * MM_PER_CM : value * MM_PER_INCH;
}

function NumberField(props: {
  readonly label: string;
  readonly value: string;
  readonly change: (typed: string) => void;
}): JSX.Element {
  const { label, value, change } = props;
  return (
    <label class="number">
      {label}{" "}
      <input
        type="text"
        size={9}
        key={value}
        defaultValue={value}
        onChange={(event) => change(event.currentTarget.value)}
      />
    </label>
  );
}

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

function Deeds(): JSX.Element | null {
  const count = selectedEntries.value.length;
  const components = componentEntries.value.length;
  if (count === 0) return null;
  const turns = selectedThings.value.some(({ kind }) => kind === "component" || kind === "legend");
  return (
    <div class="deeds">
      {turns && <Deed words="Turn a quarter" letter="T" act={() => turnSelection(90)} />}
      {components > 0 && <Deed words="Copy" letter="C" act={copySelection} />}
      <Deed words="Take off" letter="Del" act={removeSelection} />
      {count > 2 && <Deed words="Space evenly" letter="E" act={spaceSelection} />}
      {components > 1 && <Deed words="Make a row" letter="" act={() => makePattern("row")} />}
      {components > 1 && <Deed words="Make a column" letter="" act={() => makePattern("column")} />}
      {components > 2 && <Deed words="Make a ring" letter="" act={() => makePattern("ring")} />}
    </div>
  );
}

interface DeedProps {
  readonly words: string;
  readonly letter: string;
  readonly act: () => void;
}

const Deed = ({ words, letter, act }: DeedProps): JSX.Element => (
  <button type="button" onClick={act}>
    {words}
    {letter === "" ? null : <kbd>{letter}</kbd>}
  </button>
);
