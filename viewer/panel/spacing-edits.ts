// A selection spaced evenly between its outermost two, as a change of the text: each takes a step by the key that places
// it, and what leans on one that has moved already needs only the rest of its step.

import { draggedValue, dragOf } from "../../src/design/drag-table.ts";
import { type Edit, replaceValue } from "../../src/design/edit.ts";
import { lengthLike } from "../../src/design/length-text.ts";
import type { PlaceDesign } from "../../src/design/panel-design.ts";
import { difference } from "../../src/design/rewriting.ts";
import type { Source } from "../../src/design/source.ts";
import { applyEdits, type TextEdit } from "../../src/diagnostics/text-edit.ts";
import { samePlace } from "../../src/geometry/tolerance.ts";
import { type MovableThing, movableThings } from "../../src/layout/movable-things.ts";
import { type MoveAxis, movedWith } from "../../src/layout/moved-with.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";

export interface Spacing {
  readonly edit: Edit;
  readonly axis: MoveAxis;
  /** From centre to centre, mm. */
  readonly pitch: number;
}

export function spacedEvenly(
  from: Source,
  entries: readonly string[],
  layout: PanelLayout,
): Spacing | null {
  const things = movableThings(layout).filter(({ end }) => end === "at");
  const firsts = entries.flatMap((entry) => things.find((one) => one.entry === entry) ?? []);
  if (firsts.length < 3) return null;
  const axis = widerAxis(firsts);
  const place = ({ at }: MovableThing): number => (axis === "across" ? at.x : at.y);
  const sorted = firsts.toSorted((a, b) => place(a) - place(b));
  const low = place(sorted[0]!);
  const pitch = (place(sorted.at(-1)!) - low) / (sorted.length - 1);
  const wanted = new Map(
    sorted.map((component, index) => [component.entry, low + index * pitch - place(component)]),
  );
  return { edit: stepped(from, leadersFirst(sorted, axis), { wanted, axis, layout }), axis, pitch };
}

const widerAxis = (components: readonly MovableThing[]): MoveAxis => {
  const spread = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  const across = spread(components.map(({ at }) => at.x));
  return across >= spread(components.map(({ at }) => at.y)) ? "across" : "along";
};

/** What others lean on goes before them. */
const leadersFirst = (
  components: readonly MovableThing[],
  axis: MoveAxis,
): readonly MovableThing[] => {
  const followers = (component: MovableThing): number =>
    movedWith([component.entry], axis, components).size;
  return components.toSorted((a, b) => followers(b) - followers(a));
};

function stepped(
  from: Source,
  components: readonly MovableThing[],
  on: {
    readonly wanted: ReadonlyMap<string, number>;
    readonly axis: MoveAxis;
    readonly layout: PanelLayout;
  },
): Edit {
  const gone = new Map<string, number>();
  const edits: TextEdit[] = [];
  for (const { id, entry, place } of components) {
    const rest = (on.wanted.get(entry) ?? 0) - (gone.get(id) ?? 0);
    if (Math.abs(rest) < samePlace) continue;
    const taken = stepEdit(from, place, { axis: on.axis, shift: rest });
    if (taken === null) return refusedFor(entry);
    edits.push(taken);
    for (const moved of movedWith([entry], on.axis, movableThings(on.layout)))
      gone.set(moved, (gone.get(moved) ?? 0) + rest);
  }
  const applied = applyEdits(from.text, edits);
  return applied.kind === "refused"
    ? applied
    : { kind: "edit", edit: difference(from, applied.text) };
}

const refusedFor = (entry: string): Edit => ({
  kind: "refused",
  why: `${entry} has no number of its own there: set it free first`,
});

function stepEdit(
  from: Source,
  place: PlaceDesign,
  { axis, shift }: { readonly axis: MoveAxis; readonly shift: number },
): TextEdit | null {
  const drag = dragOf(place[axis]);
  const value = drag.kind === "number" ? draggedValue(drag, shift) : null;
  const span = drag.kind === "number" ? place.written.keys[drag.key] : undefined;
  if (value === null || span === undefined) return null;
  return replaceValue(from, span, lengthLike(from.text.slice(span.start, span.end), value));
}
