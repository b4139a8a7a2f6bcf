// Whatever is picked written once more, as one change of the panel's text: components and markings in the words of the first
// ones, screws by a place. What stands by one that is copied too stands by its copy; a border goes round the copies.
// Pure: text and layout in, the edit out, or what it takes besides.

import { copiedItem } from "../../src/design/copied-item.ts";
import {
  appendItem,
  type Edit,
  nodeAt,
  type Path,
  removeKey,
  replaceValue,
  setKey,
} from "../../src/design/edit.ts";
import { entryName } from "../../src/design/entry-name.ts";
import { lengthIn, usualUnit } from "../../src/design/length-text.ts";
import { nameReferences } from "../../src/design/name-references.ts";
import type { MarkingDesign, PlaceDesign } from "../../src/design/panel-design.ts";
import { pathAt } from "../../src/design/path-at.ts";
import { placePath, setPlaceFree } from "../../src/design/place-edit.ts";
import {
  difference,
  rewritten,
  type Step,
  together,
  unchanged,
} from "../../src/design/rewriting.ts";
import type { Source } from "../../src/design/source.ts";
import { inWords } from "../../src/diagnostics/nearest.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { entryPattern } from "../../src/layout/entry-pattern.ts";
import { markingPlaces } from "../../src/layout/marking-places.ts";
import { groupsAmong } from "../../src/layout/move-edits.ts";
import { neighbourOn } from "../../src/layout/moved-with.ts";
import type { PanelLayout, PlacedFixing } from "../../src/layout/panel-layout.ts";
import { lowestCentre } from "../../src/layout/place-moves.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";
import { componentDoubled } from "./component-edits.ts";

export interface Copying {
  readonly entries: readonly string[];
  readonly shift: Shift;
  readonly layout: PanelLayout;
  /** A name like another one, and in use by nothing. */
  readonly nameLike: (entry: string) => string;
}

export type Copied =
  | { readonly kind: "copied"; readonly edit: Edit; readonly names: readonly string[] }
  /** It takes more than was asked. */
  | {
      readonly kind: "choice";
      readonly why: string;
      readonly title: string;
      readonly edit: Edit;
    }
  | { readonly kind: "refused"; readonly why: string };

export function thingsCopied(from: Source, copying: Copying): Copied {
  const { entries, layout } = copying;
  const groups = groupsAmong(entries, layout);
  if (groups.length > 0) return withMembers(from, copying, groups);
  const fixings = layout.fixings.filter(({ entry }) => entries.includes(entry));
  if (fixings.some(({ kind }) => kind !== "screw"))
    return { kind: "refused", why: "the stack takes two dowels, and no third" };
  const components = layout.design.components.filter(({ id }) => entries.includes(id));
  const markings = layout.design.markings.filter(({ id }) => entries.includes(id));
  const names = new Map(components.map(({ id }) => [id, copying.nameLike(id)]));
  const scene = { ...copying, from, names };
  const marked = copiedMarkings(markings, scene);
  const screws = copiedScrews(fixings, scene);
  const steps = [
    ...componentSteps(
      components.map(({ id }) => id),
      scene,
    ),
    ...marked.steps,
    ...screws.steps,
  ];
  const edit = rewritten(from, steps);
  const { title, why } = screws;
  return title === null
    ? { kind: "copied", edit, names: [...names.values(), ...marked.names, ...screws.names] }
    : { kind: "choice", why, title, edit };
}

/** A border without what it goes round would lie upon the first one. */
function withMembers(
  from: Source,
  copying: Copying,
  groups: ReturnType<typeof groupsAmong>,
): Copied {
  const members = [...new Set(groups.flatMap((group) => group.members))];
  const missing = members.filter((member) => !copying.entries.includes(member));
  const whole = thingsCopied(from, { ...copying, entries: [...copying.entries, ...missing] });
  if (whole.kind === "refused") return whole;
  const own = `Copy ${inWords(missing, "and")} too`;
  return {
    kind: "choice",
    why: groups.map(({ marking, why }) => `${marking.id} ${why}`).join("; "),
    title: whole.kind === "choice" ? `${own}; ${whole.title}` : own,
    edit: whole.edit,
  };
}

interface Scene extends Copying {
  readonly from: Source;
  /** Of the components that are copied, each with its copy's. */
  readonly names: ReadonlyMap<string, string>;
}

/** All of them at once: a text that is read anew for each of sixty takes a second. */
function componentSteps(entries: readonly string[], scene: Scene): readonly Step[] {
  if (entries.length === 0) return [];
  const named = (entry: string): string => scene.names.get(entry) ?? entry;
  return [
    (now) =>
      together(
        now,
        entries.map((entry) => componentDoubled(now, entry, named(entry))),
      ),
    (now) =>
      together(
        now,
        entries.map((entry) => copyPlaced(now, entry, { name: named(entry), scene })),
      ),
  ];
}

function copyPlaced(
  now: Source,
  entry: string,
  { name, scene }: { readonly name: string; readonly scene: Scene },
): Edit {
  const { layout } = scene;
  const place = layout.components.find((one) => one.entry === entry)?.place;
  if (place === undefined) return { kind: "refused", why: `${entry} could not be placed` };
  const path = placePath(now, name);
  const low = lowestCentre(entry, layout);
  return path === null
    ? { kind: "refused", why: `${entry} has no place` }
    : rewritten(now, placeSteps(path, place, { low, scene }));
}

/** By its copied neighbours where it stands by nothing else; else at numbers of its own. */
function placeSteps(
  path: Path,
  place: PlaceDesign,
  { low, scene }: { readonly low: Shift; readonly scene: Scene },
): readonly Step[] {
  const { names, shift, from } = scene;
  const neighbours = [neighbourOn(place.across), neighbourOn(place.along)];
  const leans = neighbours.every((one) => one !== null && names.has(entryName(one)));
  const unit = usualUnit(from.text);
  const free = { x: lengthIn(unit, low.x + shift.x), y: lengthIn(unit, low.y + shift.y) };
  return [
    // It was read off no photograph where it stands now.
    (now) =>
      nodeAt(now, [...path, "residual"]) === null
        ? unchanged(now)
        : removeKey(now, path, "residual"),
    (now) => (leans ? namedAnew(now, path, names) : setPlaceFree(now, path, free)),
  ];
}

const refusing =
  (why: string): Step =>
  () => ({ kind: "refused", why });

/** Whatever is named below a path, by the names of the copies. */
function namedAnew(now: Source, below: Path, names: ReadonlyMap<string, string>): Edit {
  const edits = nameReferences(now).flatMap(({ name, path, node }) => {
    const entry = entryName(name);
    const copy = names.get(entry);
    return copy === undefined || !below.every((step, index) => path[index] === step)
      ? []
      : [replaceValue(now, node.span, `${copy}${name.slice(entry.length)}`)];
  });
  const applied = applyEdits(now.text, edits);
  return applied.kind === "refused"
    ? applied
    : { kind: "edit", edit: difference(now, applied.text) };
}

interface Made {
  readonly steps: readonly Step[];
  readonly names: readonly string[];
}

function copiedMarkings(markings: readonly MarkingDesign[], scene: Scene): Made {
  const { design } = scene.layout;
  const numbers = new Map<string, number>();
  const made = markings.map((marking): Made => {
    const { kind, id, written } = marking;
    const count = design.markings.filter((one) => one.kind === kind).length;
    const number = (numbers.get(kind) ?? count) + 1;
    numbers.set(kind, number);
    const unsaid = `${kind}-${number}`;
    // What has no name goes by its kind and number, if nothing else does.
    const isNamed =
      written.keys["name"] !== undefined || design.markings.some((one) => one.id === unsaid);
    const name = isNamed ? scene.nameLike(id) : unsaid;
    return { steps: markingSteps(marking, isNamed ? name : null, scene), names: [name] };
  });
  return {
    steps: made.flatMap(({ steps }) => steps),
    names: made.flatMap(({ names }) => names),
  };
}

function markingSteps(marking: MarkingDesign, name: string | null, scene: Scene): readonly Step[] {
  const { from, layout, names } = scene;
  // The path of a marking leads to what stands under its kind.
  const path = pathAt(from, marking.written.span);
  const [list, index, kind] = path ?? [];
  if (list === undefined || index === undefined || kind === undefined)
    return [refusing(`the text does not say where ${marking.id} is written`)];
  const ends = markingPlaces(marking).map(({ end, place }) => ({
    place,
    // Of a row or a ring it stands among the pattern's own numbers.
    within: pathAt(from, place.written.span)?.slice(path?.length),
    low: lowestCentre(marking.id, layout, end),
  }));
  if (ends.some(({ low }) => !Number.isFinite(low.x)))
    return [refusing(`${marking.id} could not be placed`)];
  return [
    (now) => copiedItem(now, [list], Number(index)),
    (now) => {
      const own = lastOf(now, list, kind);
      return rewritten(now, [
        (copy) =>
          name === null ? unchanged(copy) : setKey(copy, own, { key: "name", value: name }),
        ...ends.flatMap(({ place, within, low }) =>
          within === undefined
            ? [refusing(`the text does not say where ${marking.id} stands`)]
            : placeSteps([...own, ...within], place, { low, scene }),
        ),
        (copy) => namedAnew(copy, [...own, "around"], names),
      ]);
    },
  ];
}

function lastOf(now: Source, list: string, kind: string): Path {
  const node = nodeAt(now, [list]);
  const last = node?.kind === "list" ? node.items.length - 1 : 0;
  return [list, `${last}`, kind];
}

interface MadeScrews extends Made {
  readonly why: string;
  /** null where nothing but the copies is written. */
  readonly title: string | null;
}

/** One place written down is all of them written down, where the rule sets them. */
function copiedScrews(screws: readonly PlacedFixing[], scene: Scene): MadeScrews {
  const { from, layout, shift } = scene;
  const all = layout.fixings.filter(({ kind }) => kind === "screw");
  const names = screws.map((_, index) => `fixing.${all.length + index + 1}`);
  if (layout.design.fixings?.at != null || screws.length === 0) {
    const entries = [...new Set(screws.map(({ entry }) => entry))];
    const steps = entries.flatMap((entry) => screwSteps(entry, scene));
    return { steps, names, why: "", title: null };
  }
  const unit = usualUnit(from.text);
  const { minX, minY } = layout.nominal;
  const placed = (x: number, y: number): string =>
    `x: ${lengthIn(unit, x - minX)}, y: ${lengthIn(unit, y - minY)}`;
  const copies = screws.map(({ at }) => placed(at.x + shift.x, at.y + shift.y));
  const value = `[${[...all.map(({ at }) => placed(at.x, at.y)), ...copies]
    .map((place) => `{ ${place} }`)
    .join(", ")}]`;
  return {
    steps: [(now) => setKey(now, ["fixings"], { key: "at", value })],
    names,
    why: "the rule for screws and dowels sets the screws",
    title: `Write down where all ${all.length} screws stand, with ${copies.length} more at ${copies.join(" and ")}`,
  };
}

const SCREWS: Path = ["fixings", "at"];

/** The copy of one by a place alone; of a row or a ring its own item, set down elsewhere. */
function screwSteps(entry: string, scene: Scene): readonly Step[] {
  const { from, layout, shift } = scene;
  const low = lowestCentre(entry, layout);
  const place = layout.ownPlaces.find((own) => own.entry === entry)?.place;
  if (place === undefined) return [refusing(`${entry} could not be placed`)];
  if (entryPattern(entry, layout) === null) {
    const unit = usualUnit(from.text);
    const [x, y] = [lengthIn(unit, low.x + shift.x), lengthIn(unit, low.y + shift.y)];
    return [(now) => appendItem(now, SCREWS, `{ x: ${x}, y: ${y} }`)];
  }
  const path = pathAt(from, place.written.span);
  const [index] = path?.slice(SCREWS.length) ?? [];
  if (path === null || index === undefined)
    return [refusing(`the text does not say where ${entry} stands`)];
  return [
    (now) => copiedItem(now, SCREWS, Number(index)),
    (now) => {
      const list = nodeAt(now, SCREWS);
      const last = list?.kind === "list" ? list.items.length - 1 : 0;
      const own = [...SCREWS, `${last}`, ...path.slice(SCREWS.length + 1)];
      return rewritten(now, placeSteps(own, place, { low, scene }));
    },
  ];
}
