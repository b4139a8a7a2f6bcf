// Where what is selected stands, in the design's own words: each statement with its number to be written over, and where that
// is from the lower left corner.

import type { JSX } from "preact";
import { dragOf } from "../../src/design/drag-table.ts";
import { lengthIn } from "../../src/design/length-text.ts";
import type { AxisPlace } from "../../src/design/panel-design.ts";
import type { Span } from "../../src/diagnostics/finding.ts";
import { decimal } from "../../src/geometry/number.ts";
import type { MovableThing } from "../../src/layout/movable-things.ts";
import { lowestCentre } from "../../src/layout/place-moves.ts";
import { panel, texts } from "../desk.ts";
import { unit } from "./board.ts";
import { stateNumber, typeCoordinate } from "./edit-acts.ts";
import { NumberField } from "./number-field.tsx";
import { turnTo } from "./turn-acts.ts";

/** What stands in a span of the design's text. */
export const textIn = (span: Span | undefined): string =>
  span === undefined ? "" : (texts.value.get(span.file) ?? "").slice(span.start, span.end);

interface AxisProps {
  readonly thing: MovableThing;
  readonly axis: "across" | "along";
}

/** One statement in the design's own words, its number to be written over. */
export function StatedAxis({ thing, axis }: AxisProps): JSX.Element {
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
export function Coordinates(props: {
  readonly thing: MovableThing;
  /** As the design says it, degrees; null where it has no angle. */
  readonly turn: number | null;
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
          change={(typed) => typeCoordinate(thing.entry, axis, typed)}
        />
      ))}
      {turn !== null && (
        <NumberField
          label="turned"
          value={`${decimal(turn, 2)} deg`}
          change={(typed) => turnTo(turn, typed)}
        />
      )}
    </p>
  );
}

function isStated({ place }: MovableThing, axis: "x" | "y"): boolean {
  const said = axis === "x" ? place.across : place.along;
  return said.kind === "from-low" && said.key === axis;
}
