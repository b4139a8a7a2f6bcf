// Things taken off the panel as one change of its text, with whatever names them: neighbours keep their place by numbers of
// their own, borders go on round what is left, and go where nothing is. Pure: text and layout in, an edit and its words out.

import { type Edit, nodeAt, type Path, removeItem, removeKey } from "../../src/design/edit.ts";
import { entryName } from "../../src/design/entry-name.ts";
import { LEAST_SCREWS } from "../../src/design/least-screws.ts";
import { lengthIn, usualUnit } from "../../src/design/length-text.ts";
import { nameReferences } from "../../src/design/name-references.ts";
import { pathAt } from "../../src/design/path-at.ts";
import { patternCount } from "../../src/design/pattern-count.ts";
import { setPlaceFree } from "../../src/design/place-edit.ts";
import { rewritten, type Step } from "../../src/design/rewriting.ts";
import type { Source } from "../../src/design/source.ts";
import { type MovableThing, movableThings } from "../../src/layout/movable-things.ts";
import { neighbourOn } from "../../src/layout/moved-with.ts";
import type { PanelLayout, PlacedFixing } from "../../src/layout/panel-layout.ts";
import { lowestCentre } from "../../src/layout/place-moves.ts";
import { entryPath } from "./set-out-entry.ts";

export interface Removal {
  readonly edit: Edit;
  /** What it changes beside what is taken off, each as a sentence; empty where nothing names it. */
  readonly says: readonly string[];
}

/** `entries`: components, markings, windows, and screws that the design places. */
export function thingsRemoved(
  from: Source,
  entries: readonly string[],
  layout: PanelLayout,
): Removal {
  const gone = new Set(entries);
  const items = itemsOf(from, gone, layout);
  if (typeof items === "string") return { edit: { kind: "refused", why: items }, says: [] };
  const freeing = leaning(gone, layout).map((thing) => freed(from, thing, layout));
  const groups = groupsOf(from, gone);
  const emptied = groups.filter(({ left }) => left.length === 0);
  const thinned = groups.filter(({ left }) => left.length > 0);
  const lists = [...items, ...emptied.map(({ item }) => item)];
  const steps: readonly Step[] = [
    ...freeing.map(({ step }) => step),
    ...thinned.flatMap(({ path, gone: indexes }) =>
      indexes.toReversed().map(
        (index): Step =>
          (now) =>
            removeItem(now, path, index),
      ),
    ),
    // The last of a list first: the numbers of those before it stay.
    ...inReverse(lists).map(
      ({ list, index }): Step =>
        (now) =>
          removeItem(now, list, index),
    ),
    ...entries
      .filter((entry) => nodeAt(from, ["components", entry]) !== null)
      .map(
        (entry): Step =>
          (now) =>
            removeKey(now, ["components"], entry),
      ),
  ];
  return {
    edit: rewritten(from, steps),
    says: [
      ...new Set(freeing.map(({ thing }) => `${thing.entry} keeps its place by its own numbers`)),
      ...thinned.map(({ name, names }) => `${name} no longer goes round ${shortList(names)}`),
      ...emptied.map(
        ({ name, names }) =>
          `${name} round ${shortList(names)} goes with it: nothing else is in it`,
      ),
    ],
  };
}

const shortList = (names: readonly string[]): string =>
  names.length <= MOST_NAMED
    ? names.join(", ")
    : `${names.slice(0, MOST_NAMED).join(", ")} and ${names.length - MOST_NAMED} more`;

const MOST_NAMED = 3;

interface Item {
  readonly list: Path;
  readonly index: number;
}

const itemAt = (path: Path): Item => ({ list: path.slice(0, -1), index: Number(path.at(-1)) });

const inReverse = (items: readonly Item[]): readonly Item[] => {
  const key = ({ list, index }: Item): string => [...list, index].join("/");
  const once = new Map(items.map((item) => [key(item), item]));
  return [...once.values()].toSorted((a, b) => b.index - a.index);
};

/** Markings and screws as items of their lists; words where one can't be taken off. */
function itemsOf(
  from: Source,
  gone: ReadonlySet<string>,
  layout: PanelLayout,
): readonly Item[] | string {
  const markings = layout.design.markings.filter(({ id }) => gone.has(id));
  const screws = layout.fixings.filter(({ entry }) => gone.has(entry));
  const why = screws.length === 0 ? null : whyScrewsStay(screws, layout);
  if (why !== null) return why;
  // The path of a marking leads to what stands under its kind: its item is one up.
  const paths = [
    ...markings.map(({ written }) => pathAt(from, written.span)?.slice(0, -1)),
    ...[...new Set(screws.map(({ entry }) => entry))].map((entry) =>
      entryPath(from, entry, layout),
    ),
  ];
  return paths.some((path) => path === null || path === undefined)
    ? "its text can't be found"
    : paths.flatMap((path) => (path == null ? [] : [itemAt(path)]));
}

function whyScrewsStay(screws: readonly PlacedFixing[], { design }: PanelLayout): string | null {
  const given = design.fixings?.at ?? null;
  if (screws.some(({ kind }) => kind !== "screw")) return "the stack takes both its dowels";
  if (given === null) return "the rule sets the screws: move one to write down where they stand";
  const count = given.reduce((sum, { pattern }) => sum + patternCount(pattern), 0);
  return count - screws.length < LEAST_SCREWS
    ? `the stack takes at least ${LEAST_SCREWS} screws`
    : null;
}

/** Whatever stands by one that goes, each place once. */
function leaning(gone: ReadonlySet<string>, layout: PanelLayout): readonly MovableThing[] {
  const isGone = (name: string | null): boolean => name !== null && gone.has(entryName(name));
  const found = movableThings(layout).filter(
    ({ entry, place }) =>
      !gone.has(entry) && (isGone(neighbourOn(place.across)) || isGone(neighbourOn(place.along))),
  );
  const starts = found.map(({ place }) => place.written.span.start);
  return found.filter((_, index) => starts.indexOf(starts[index]!) === index);
}

function freed(
  from: Source,
  thing: MovableThing,
  layout: PanelLayout,
): { readonly thing: MovableThing; readonly step: Step } {
  const path = pathAt(from, thing.place.written.span);
  const unit = usualUnit(from.text);
  const low = lowestCentre(thing.entry, layout, thing.end);
  const place = { x: lengthIn(unit, low.x), y: lengthIn(unit, low.y) };
  const step: Step = (now) =>
    path === null
      ? { kind: "refused", why: `the text does not say where ${thing.entry} stands` }
      : setPlaceFree(now, path, place);
  return { thing, step };
}

interface Group {
  readonly name: string;
  /** Of its `around`. */
  readonly path: Path;
  readonly item: Item;
  readonly names: readonly string[];
  readonly gone: readonly number[];
  readonly left: readonly number[];
}

/** Lists of members that name one that goes. */
function groupsOf(from: Source, gone: ReadonlySet<string>): readonly Group[] {
  const members = nameReferences(from).filter(({ as }) => as === "member");
  const lists = new Map(
    members.map(({ path }) => [path.slice(0, -1).join("/"), path.slice(0, -1)]),
  );
  return [...lists.values()].flatMap((path): readonly Group[] => {
    const own = members.filter((each) => each.path.slice(0, -1).join("/") === path.join("/"));
    const isGone = own.map(({ name }) => gone.has(entryName(name)));
    const owner = path.slice(0, -1);
    const item = owner[0] === "markings" ? itemAt(owner.slice(0, -1)) : itemAt(owner);
    const name = nameOf(from, owner);
    if (!isGone.includes(true) || gone.has(name)) return [];
    const indexes = own.map((_, index) => index);
    return [
      {
        name,
        path,
        item,
        names: own.filter((_, index) => isGone[index]).map((each) => each.name),
        gone: indexes.filter((index) => isGone[index]),
        left: indexes.filter((index) => !isGone[index]),
      },
    ];
  });
}

/** A marking by its name, or what it is; a lit area by its circuit. */
function nameOf(from: Source, owner: Path): string {
  const said = nodeAt(from, [...owner, owner[0] === "markings" ? "name" : "circuit"]);
  if (said?.kind === "scalar") return said.text;
  return owner[0] === "markings" ? `the ${owner.at(-1)}` : "the lit area";
}
