// A shift of placed components as a change of the design's text: what the keys can say is said by them, and for what no
// key can say there is a named choice that sets it free. Takes the layout and the file's text; moves nothing by itself.

import { type Drag, draggedValue, dragOf } from "../design/drag-table.ts";
import type { Edit } from "../design/edit.ts";
import { replaceValue } from "../design/edit.ts";
import { lengthIn, lengthLike, usualUnit } from "../design/length-text.ts";
import type { AxisPlace } from "../design/panel-design.ts";
import { type FreePlace, setFree } from "../design/place-edit.ts";
import { rewritten, type Step } from "../design/rewriting.ts";
import type { Source } from "../design/source.ts";
import { applyEdits, type TextEdit } from "../diagnostics/text-edit.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { type MoveAxis, movedWith, neighbourOn } from "./moved-with.ts";
import type { PanelLayout, PlacedComponent } from "./panel-layout.ts";

export interface Move {
  /** Entries of the design, not members of a pattern. */
  readonly entries: readonly string[];
  /** Right and up, mm. */
  readonly x: number;
  readonly y: number;
}

export type MoveOutcome =
  | { readonly kind: "still" }
  | { readonly kind: "edits"; readonly edits: readonly TextEdit[]; readonly says: string }
  | {
      readonly kind: "choice";
      /** What holds it, in words. */
      readonly why: string;
      /** What the keys can say of the move; empty where they can say nothing. */
      readonly kept: readonly TextEdit[];
      /** The whole move, with a place of its own where nothing else says it. */
      readonly title: string;
      readonly free: readonly TextEdit[];
    }
  | { readonly kind: "refused"; readonly why: string };

export const moveEdits = (move: Move, layout: PanelLayout, from: Source): MoveOutcome => {
  const statements = statementsOf(move, layout);
  if (statements.length === 0) return { kind: "still" };
  const numbers = statements.flatMap((statement) => statement.number ?? []);
  const held = statements.flatMap((statement) => statement.held ?? []);
  const replaced = numbers.map(({ component, key, value }) =>
    numberEdit(from, component, { key, value }),
  );
  const kept = replaced.filter((edit) => edit !== null);
  if (kept.length < replaced.length)
    return { kind: "refused", why: "the text does not say its place in numbers" };
  if (held.length === 0) {
    const says = kept.map(({ text }, index) => `${numbers[index]?.key}: ${text}`).join(", ");
    return { kind: "edits", edits: kept, says };
  }
  return choice(held, { kept, layout, move, from });
};

interface Statement {
  readonly number: {
    readonly component: PlacedComponent;
    readonly key: string;
    readonly value: number;
  } | null;
  readonly held: Held | null;
}

interface Held {
  readonly component: PlacedComponent;
  readonly axis: MoveAxis;
  readonly why: string;
}

const statementsOf = (move: Move, { components }: PanelLayout): readonly Statement[] =>
  (["across", "along"] as const).flatMap((axis) => {
    const shift = axis === "across" ? move.x : move.y;
    if (Math.abs(shift) < samePlace) return [];
    return leadersOf(move.entries, axis, components).map((component) =>
      statementOf(component, axis, shift),
    );
  });

/** Those that must say the move themselves: whoever leans on one that moves comes along unsaid. */
const leadersOf = (
  entries: readonly string[],
  axis: MoveAxis,
  components: readonly PlacedComponent[],
): readonly PlacedComponent[] => {
  const firsts = entries.flatMap((entry) => components.find((one) => one.entry === entry) ?? []);
  return firsts.filter(({ entry, place }) => {
    const neighbour = neighbourOn(place[axis]);
    if (neighbour === null) return true;
    const others = entries.filter((other) => other !== entry);
    const along = movedWith(others, axis, components);
    return !(others.includes(neighbour) || along.has(neighbour) || hasMember(along, neighbour));
  });
};

const hasMember = (ids: ReadonlySet<string>, entry: string): boolean => ids.has(`${entry}.1`);

const statementOf = (component: PlacedComponent, axis: MoveAxis, shift: number): Statement => {
  const drag = dragOf(component.place[axis]);
  if (drag.kind === "held") return { number: null, held: { component, axis, why: heldBy(drag) } };
  const value = draggedValue(drag, shift);
  if (value !== null) return { number: { component, key: drag.key, value }, held: null };
  return { number: null, held: { component, axis, why: passes(component.place[axis], drag.key) } };
};

const heldBy = (drag: Drag & { readonly kind: "held" }): string => {
  switch (drag.by) {
    case "middle":
      return "stands in the middle";
    case "edge":
      return "stands at the edge";
    case "neighbour":
      return `keeps the line of ${drag.neighbour}`;
  }
};

const passes = (place: AxisPlace, key: string): string =>
  place.kind === "beside"
    ? `would pass ${place.neighbour}, and ${key} can't be less than nothing`
    : `would leave the panel, and ${key} can't be less than nothing`;

const numberEdit = (
  from: Source,
  component: PlacedComponent,
  { key, value }: { readonly key: string; readonly value: number },
): TextEdit | null => {
  const span = component.place.written.keys[key];
  if (span === undefined || span.file !== from.file) return null;
  return replaceValue(from, span, lengthLike(from.text.slice(span.start, span.end), value));
};

const choice = (
  held: readonly Held[],
  on: {
    readonly kept: readonly TextEdit[];
    readonly layout: PanelLayout;
    readonly move: Move;
    readonly from: Source;
  },
): MoveOutcome => {
  const { kept, from } = on;
  const free = freePlaces(held, on);
  const steps = free.map(
    ({ entry, place }): Step =>
      (now) =>
        setFree(now, entry, place),
  );
  const applied = applyEdits(from.text, kept);
  if (applied.kind === "refused") return applied;
  const whole = wholeEdit(from, applied.text, steps);
  if (whole.kind === "refused") return whole;
  return {
    kind: "choice",
    why: held.map(({ component, why }) => `${component.entry} ${why}`).join("; "),
    kept,
    title: free.map(({ entry, place }) => `Set ${entry} free at ${placeWords(place)}`).join("; "),
    free: [whole.edit],
  };
};

const wholeEdit = (from: Source, after: string, steps: readonly Step[]): Edit =>
  rewritten(from, [
    (now) => ({
      kind: "edit",
      edit: { file: now.file, baseHash: now.hash, start: 0, end: now.text.length, text: after },
    }),
    ...steps,
  ]);

interface Freed {
  readonly entry: string;
  readonly place: FreePlace;
}

/** An axis that was said by another one's neighbour, or by one word for both, needs a number of its own as well. */
const freePlaces = (
  held: readonly Held[],
  on: { readonly layout: PanelLayout; readonly move: Move; readonly from: Source },
): readonly Freed[] => {
  const entries = [...new Set(held.map(({ component }) => component.entry))];
  const unit = usualUnit(on.from.text);
  return entries.map((entry) => {
    const own = held.filter(({ component }) => component.entry === entry);
    const [first] = own;
    const low = lowestCentre(entry, on.layout);
    const isFreed = (axis: MoveAxis): boolean =>
      own.some((one) => one.axis === axis) || (first !== undefined && isUnsaid(first, axis));
    return {
      entry,
      place: {
        x: isFreed("across") ? lengthIn(unit, low.x + on.move.x) : null,
        y: isFreed("along") ? lengthIn(unit, low.y + on.move.y) : null,
      },
    };
  });
};

/** Whether an axis would be left without a word once the other one of a held thing is set free. */
const isUnsaid = ({ component, axis: freed }: Held, axis: MoveAxis): boolean => {
  if (axis === freed) return true;
  const { place } = component;
  if (Object.keys(place.written.keys).length === 0) return true;
  const key = axis === "across" ? "in-line-with" : "level-with";
  return (
    place[freed].kind === "beside" &&
    place[axis].kind === "in-line" &&
    place.written.keys[key] === undefined
  );
};

/** What `x` and `y` of an entry say: the lowest centre of its members, from the nominal corner. */
export const lowestCentre = (
  entry: string,
  { components, nominal }: PanelLayout,
): { readonly x: number; readonly y: number } => {
  const own = components.filter((component) => component.entry === entry);
  return {
    x: Math.min(...own.map(({ at }) => at.x)) - nominal.minX,
    y: Math.min(...own.map(({ at }) => at.y)) - nominal.minY,
  };
};

const placeWords = ({ x, y }: FreePlace): string =>
  [x === null ? [] : `x: ${x}`, y === null ? [] : `y: ${y}`].flat().join(", ");
