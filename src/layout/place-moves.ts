// A shift of things that the design places, as a change of its text: what the keys can say is said by them, and for what no
// key can say there is a named choice that sets it free. Takes the layout and the file's text; moves nothing by itself.

import { type Drag, draggedValue, dragOf } from "../design/drag-table.ts";
import { type Edit, type Path, replaceValue } from "../design/edit.ts";
import { lengthIn, lengthLike, usualUnit } from "../design/length-text.ts";
import type { AxisPlace } from "../design/panel-design.ts";
import { pathAt } from "../design/path-at.ts";
import { type FreePlace, setPlaceFree } from "../design/place-edit.ts";
import { rewritten, type Step } from "../design/rewriting.ts";
import type { Source } from "../design/source.ts";
import { inWords } from "../diagnostics/nearest.ts";
import { applyEdits, type TextEdit } from "../diagnostics/text-edit.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { type MovableThing, movableThings } from "./movable-things.ts";
import { residualSteps } from "./moved-by-hand.ts";
import { type MoveAxis, movedWith, neighbourOn } from "./moved-with.ts";
import type { PanelLayout } from "./panel-layout.ts";

export interface Move {
  /** Entries of the design, not members of a pattern: components, markings, windows, screws and dowels by their names. */
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

export const placeMoves = (move: Move, layout: PanelLayout, from: Source): MoveOutcome =>
  statedMoves(statedShifts(move, layout), { layout, from, shiftOf: () => move });

/** One statement of a place that is to say a shift. */
export interface StatedShift {
  readonly thing: MovableThing;
  readonly axis: MoveAxis;
  /** Right or up, mm. */
  readonly shift: number;
}

export interface MoveScene {
  readonly layout: PanelLayout;
  readonly from: Source;
  /** How far an entry goes in all, whatever its own statements must say of it. */
  readonly shiftOf: (entry: string) => Pick<Move, "x" | "y">;
}

/** Shifts of several statements as one change; no two of one place and axis. */
export const statedMoves = (shifts: readonly StatedShift[], scene: MoveScene): MoveOutcome => {
  const { from } = scene;
  const statements = shifts.map(statementOf);
  if (statements.length === 0) return { kind: "still" };
  const numbers = statements.flatMap((statement) => statement.number ?? []);
  const held = statements.flatMap((statement) => statement.held ?? []);
  const replaced = numbers.map(({ thing, key, value }) => numberEdit(from, thing, { key, value }));
  const known = replaced.filter((edit) => edit !== null);
  if (known.length < replaced.length)
    return { kind: "refused", why: "the text does not say its place in numbers" };
  const moved = numbers.map(({ thing }) => thing);
  const said = movedByHand(known, moved, from);
  if (said.kind === "refused") return said;
  const kept = said.edits;
  if (held.length > 0) return choice(held, { ...scene, kept, moved });
  const says = known.map(({ text }, index) => `${numbers[index]?.key}: ${text}`).join(", ");
  return { kind: "edits", edits: kept, says };
};

/** New numbers, and without what their places said of a photograph. */
const movedByHand = (
  edits: readonly TextEdit[],
  moved: readonly MovableThing[],
  from: Source,
):
  | { readonly kind: "edits"; readonly edits: readonly TextEdit[] }
  | { readonly kind: "refused"; readonly why: string } => {
  const steps = residualSteps(moved, from);
  if (steps.length === 0) return { kind: "edits", edits };
  const applied = applyEdits(from.text, edits);
  if (applied.kind === "refused") return applied;
  const whole = wholeEdit(from, applied.text, steps);
  return whole.kind === "refused" ? whole : { kind: "edits", edits: [whole.edit] };
};

interface Statement {
  readonly number: {
    readonly thing: MovableThing;
    readonly key: string;
    readonly value: number;
  } | null;
  readonly held: Held | null;
}

interface Held {
  readonly thing: MovableThing;
  readonly axis: MoveAxis;
  readonly why: string;
}

const statedShifts = (move: Move, layout: PanelLayout): readonly StatedShift[] => {
  const things = movableThings(layout);
  return (["across", "along"] as const).flatMap((axis) => {
    const shift = axis === "across" ? move.x : move.y;
    if (Math.abs(shift) < samePlace) return [];
    return leadersOf(move.entries, axis, things).map((thing) => ({ thing, axis, shift }));
  });
};

/** Those that must say the move themselves: whoever leans on one that moves comes along unsaid. */
const leadersOf = (
  entries: readonly string[],
  axis: MoveAxis,
  things: readonly MovableThing[],
): readonly MovableThing[] => {
  const firsts = entries.flatMap((entry) => leadsOf(entry, things));
  return firsts.filter(({ entry, place }) => {
    const neighbour = neighbourOn(place[axis]);
    if (neighbour === null) return true;
    const others = entries.filter((other) => other !== entry);
    const along = movedWith(others, axis, things);
    return !(others.includes(neighbour) || along.has(neighbour) || hasMember(along, neighbour));
  });
};

/** One for each place: members of a pattern share theirs, the ends of a line have one each. */
export const leadsOf = (entry: string, things: readonly MovableThing[]): readonly MovableThing[] =>
  things.filter(
    (one, index) =>
      one.entry === entry &&
      things.findIndex((other) => other.entry === entry && isSamePlace(one, other)) === index,
  );

const isSamePlace = (one: MovableThing, other: MovableThing): boolean =>
  one.place.written.span.start === other.place.written.span.start;

const hasMember = (ids: ReadonlySet<string>, entry: string): boolean => ids.has(`${entry}.1`);

const statementOf = ({ thing, axis, shift }: StatedShift): Statement => {
  const drag = dragOf(thing.place[axis]);
  if (drag.kind === "held") return { number: null, held: { thing, axis, why: heldBy(drag) } };
  const value = draggedValue(drag, shift);
  if (value !== null) return { number: { thing, key: drag.key, value }, held: null };
  return { number: null, held: { thing, axis, why: passes(thing.place[axis], drag.key) } };
};

/** What holds a thing, as its sentence goes on. */
export const heldBy = (drag: Drag & { readonly kind: "held" }): string => {
  switch (drag.by) {
    case "middle":
      return "stands in the middle";
    case "edge":
      return "stands at the edge";
    case "neighbour":
      return `keeps the line of ${drag.neighbour}`;
    case "members":
      return `goes round ${inWords(drag.members, "and")}`;
    case "rule":
      return "stands where the rule for screws and dowels sets it";
  }
};

const passes = (place: AxisPlace, key: string): string =>
  place.kind === "beside"
    ? `would pass ${place.neighbour}, and ${key} can't be less than nothing`
    : `would leave the panel, and ${key} can't be less than nothing`;

const numberEdit = (
  from: Source,
  thing: MovableThing,
  { key, value }: { readonly key: string; readonly value: number },
): TextEdit | null => {
  const span = thing.place.written.keys[key];
  if (span === undefined || span.file !== from.file) return null;
  return replaceValue(from, span, lengthLike(from.text.slice(span.start, span.end), value));
};

const choice = (
  held: readonly Held[],
  on: MoveScene & {
    readonly kept: readonly TextEdit[];
    /** Whose numbers those are. */
    readonly moved: readonly MovableThing[];
  },
): MoveOutcome => {
  const { kept, moved, from } = on;
  const free = freePlaces(held, on);
  const steps = free.map(
    ({ path, place }): Step =>
      (now) =>
        path === null
          ? { kind: "refused", why: "the text does not say where it stands" }
          : setPlaceFree(now, path, place),
  );
  const applied = applyEdits(from.text, kept);
  if (applied.kind === "refused") return applied;
  const freed = held
    .map(({ thing }) => thing)
    .filter((thing) => !moved.some((other) => isSamePlace(other, thing)));
  const whole = wholeEdit(from, applied.text, [...residualSteps(freed, from), ...steps]);
  if (whole.kind === "refused") return whole;
  return {
    kind: "choice",
    why: held.map(({ thing, why }) => `${nameOf(thing)} ${why}`).join("; "),
    kept,
    title: free.map(({ name, place }) => `Set ${name} free at ${placeWords(place)}`).join("; "),
    free: [whole.edit],
  };
};

/** The end of a line by its own word: "pointer (from)". */
const nameOf = ({ entry, end }: MovableThing): string =>
  end === "at" ? entry : `${entry} (${end})`;

/** The text after some edits, and further steps upon it, as one edit. */
export const wholeEdit = (from: Source, after: string, steps: readonly Step[]): Edit =>
  rewritten(from, [
    (now) => ({
      kind: "edit",
      edit: { file: now.file, baseHash: now.hash, start: 0, end: now.text.length, text: after },
    }),
    ...steps,
  ]);

interface Freed {
  readonly name: string;
  /** Where its place is written; null where the text does not say it. */
  readonly path: Path | null;
  readonly place: FreePlace;
}

/** An axis that was said by another one's neighbour, or by one word for both, needs a number of its own as well. */
const freePlaces = (held: readonly Held[], on: MoveScene): readonly Freed[] => {
  const firsts = held.filter(
    ({ thing }, index) => held.findIndex((other) => isSamePlace(other.thing, thing)) === index,
  );
  const unit = usualUnit(on.from.text);
  return firsts.map((first) => {
    const { thing } = first;
    const own = held.filter((one) => isSamePlace(one.thing, thing));
    const low = lowestCentre(thing.entry, on.layout, thing.end);
    const shift = on.shiftOf(thing.entry);
    const isFreed = (axis: MoveAxis): boolean =>
      own.some((one) => one.axis === axis) || isUnsaid(first, axis);
    return {
      name: nameOf(thing),
      path: pathAt(on.from, thing.place.written.span),
      place: {
        x: isFreed("across") ? lengthIn(unit, low.x + shift.x) : null,
        y: isFreed("along") ? lengthIn(unit, low.y + shift.y) : null,
      },
    };
  });
};

/** Whether an axis would be left without a word once the other one of a held thing is set free. */
const isUnsaid = ({ thing, axis: freed }: Held, axis: MoveAxis): boolean => {
  if (axis === freed) return true;
  const { place } = thing;
  if (Object.keys(place.written.keys).length === 0) return true;
  const key = axis === "across" ? "in-line-with" : "level-with";
  return (
    place[freed].kind === "beside" &&
    place[axis].kind === "in-line" &&
    place.written.keys[key] === undefined
  );
};

/** What `x` and `y` of an entry say: the lowest centre of its members, from the nominal corner. `end`: of a line the one of its ends. */
export const lowestCentre = (
  entry: string,
  layout: PanelLayout,
  end: MovableThing["end"] | null = null,
): { readonly x: number; readonly y: number } => {
  const own = movableThings(layout).filter(
    (thing) => thing.entry === entry && (end === null || thing.end === end),
  );
  const { nominal } = layout;
  return {
    x: Math.min(...own.map(({ at }) => at.x)) - nominal.minX,
    y: Math.min(...own.map(({ at }) => at.y)) - nominal.minY,
  };
};

const placeWords = ({ x, y }: FreePlace): string =>
  [x === null ? [] : `x: ${x}`, y === null ? [] : `y: ${y}`].flat().join(", ");
