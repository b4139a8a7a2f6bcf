// A row, a column or a ring made of windows, of free legends, of lines or of screws that are picked: one entry of the text in the
// place of several, as components become one. Pure: text and layout in, the edit out, or why the text has none for them.

import {
  type Edit,
  nodeAt,
  removeItem,
  removeKey,
  replaceValue,
  setKey,
} from "../../src/design/edit.ts";
import { lengthIn, usualUnit } from "../../src/design/length-text.ts";
import type { MarkingDesign } from "../../src/design/panel-design.ts";
import { setPlaceFree } from "../../src/design/place-edit.ts";
import { rewritten, type Step } from "../../src/design/rewriting.ts";
import type { Source } from "../../src/design/source.ts";
import { samePlace } from "../../src/geometry/tolerance.ts";
import { entryPattern } from "../../src/layout/entry-pattern.ts";
import type { PanelLayout, PlacedFixing } from "../../src/layout/panel-layout.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";
import { noPattern, type Pattern } from "./pattern-edits.ts";
import { asWritten, type PatternWords, patternWords, unlikeAmong } from "./pattern-words.ts";
import { type PatternKind, regularPlaces } from "./regular-places.ts";
import { entryPath } from "./set-out-entry.ts";

interface Picked {
  readonly entries: readonly string[];
  readonly layout: PanelLayout;
}

/** `entries`: no components among them. */
export function setOutPattern(from: Source, kind: PatternKind, picked: Picked): Pattern {
  const { entries, layout } = picked;
  if (entries.some((entry) => entryPattern(entry, layout) !== null))
    return noPattern("one of them is a pattern already");
  const markings = layout.design.markings.filter(({ id }) => entries.includes(id));
  const screws = layout.fixings.filter(({ entry }) => entries.includes(entry));
  if (markings.length === entries.length) return markingPattern(from, kind, picked);
  if (screws.length < entries.length) return noPattern("they are of different kinds");
  return screws.every((one) => one.kind === "screw")
    ? screwPattern(from, kind, { screws, layout })
    : noPattern("the stack takes two dowels, each with a hole of its own");
}

interface MarkingMember {
  readonly marking: MarkingDesign;
  /** In the list of markings. */
  readonly index: number;
  /** To what stands under its kind. */
  readonly path: readonly string[];
  readonly at: Shift;
  /** From the beginning of a line to its end; nothing for what has one place. */
  readonly run: Shift;
}

/** What each marking says of itself alone. */
const OWN = ["name", "at", "text", "from", "to"];

function markingPattern(from: Source, kind: PatternKind, picked: Picked): Pattern {
  const members = picked.entries.flatMap((entry) => markingMember(from, entry, picked.layout));
  if (members.length < picked.entries.length)
    return noPattern("the text does not say where each of them stands");
  const why = whyNoMarkings(from, kind, members);
  if (why !== null) return noPattern(why);
  const regular = regularPlaces(members, kind, asWritten);
  if (regular.kind === "refused") return noPattern(regular.why);
  const words = patternWords(kind, regular, usualUnit(from.text));
  const low = {
    x: Math.min(...regular.places.map(({ x }) => x)),
    y: Math.min(...regular.places.map(({ y }) => y)),
  };
  const edit = rewritten(from, markingSteps(from, { kind, words, low, members: regular.order }));
  const name = nameOf(regular.order, picked.layout);
  return { edit, says: words.says, names: [name], offer: null };
}

function markingMember(from: Source, entry: string, layout: PanelLayout): readonly MarkingMember[] {
  const marking = layout.design.markings.find(({ id }) => id === entry);
  const path = entryPath(from, entry, layout);
  const [at, to] = layout.ownPlaces.filter((own) => own.entry === entry).map((own) => own.at);
  if (marking === undefined || path === null || at === undefined) return [];
  const run = to === undefined ? { x: 0, y: 0 } : { x: to.x - at.x, y: to.y - at.y };
  return [{ marking, index: Number(path[1]), path, at, run }];
}

function whyNoMarkings(
  from: Source,
  kind: PatternKind,
  members: readonly MarkingMember[],
): string | null {
  const [first, ...others] = members;
  if (first === undefined) return null;
  const isLine = first.marking.kind === "line" || first.marking.kind === "arrow";
  if (others.some(({ marking }) => marking.kind !== first.marking.kind))
    return "they are of different kinds";
  if (isLine && kind === "ring") return "the text has no ring of lines, each keeps its direction";
  const odd = others.find(({ run }) => !isSame(run, first.run));
  if (odd !== undefined)
    return `${first.marking.id} and ${odd.marking.id} are not of one length and direction`;
  const written = members.map(({ marking, path }) => ({ entry: marking.id, path }));
  return unlikeAmong(from, written, OWN);
}

const isSame = (one: Shift, other: Shift): boolean =>
  Math.abs(one.x - other.x) < samePlace && Math.abs(one.y - other.y) < samePlace;

interface MarkingsSet {
  readonly kind: PatternKind;
  readonly words: PatternWords;
  readonly low: Shift;
  /** In the order of the pattern. */
  readonly members: readonly MarkingMember[];
}

/** The first one's item says it for all; the last of the list goes first, so that the numbers of those before it stay. */
function markingSteps(from: Source, { kind, words, low, members }: MarkingsSet): readonly Step[] {
  const [first, ...others] = members;
  if (first === undefined) return [];
  const { marking, path } = first;
  const { numbers, x, y } = words;
  const isLine = marking.kind === "line" || marking.kind === "arrow";
  const value = isLine ? `{ ${numbers} }` : `{ ${numbers}, x: ${x}, y: ${y} }`;
  const unit = usualUnit(from.text);
  const end = {
    x: lengthIn(unit, low.x + first.run.x),
    y: lengthIn(unit, low.y + first.run.y),
  };
  return [
    (now) => setKey(now, path, { key: kind, value }),
    ...(marking.kind === "legend" ? textSteps(from, members) : []),
    ...(isLine
      ? [
          (now: Source) => setPlaceFree(now, [...path, "from"], { x, y }),
          (now: Source) => setPlaceFree(now, [...path, "to"], end),
          // They were read off no photograph where they stand now.
          ...["from", "to"].flatMap((key) =>
            nodeAt(from, [...path, key, "residual"]) === null
              ? []
              : [(now: Source) => removeKey(now, [...path, key], "residual")],
          ),
        ]
      : [(now: Source) => removeKey(now, path, "at")]),
    ...others
      .toSorted((a, b) => b.index - a.index)
      .map(
        ({ index }): Step =>
          (now) =>
            removeItem(now, ["markings"], index),
      ),
  ];
}

/** One text where all read the same, else one a member. */
function textSteps(from: Source, members: readonly MarkingMember[]): readonly Step[] {
  const path = members[0]?.path ?? [];
  const texts = members.map((member) => {
    const node = nodeAt(from, [...member.path, "text"]);
    return node === null ? "" : from.text.slice(node.span.start, node.span.end).trim();
  });
  if (texts.every((text) => text === texts[0])) return [];
  const lines = texts.find((text) => text.includes("\n"));
  return [
    (now) =>
      lines === undefined
        ? setKey(now, path, { key: "texts", value: `[${texts.join(", ")}]` })
        : { kind: "refused", why: "the words of one of them take several lines of the text" },
    (now) => removeKey(now, path, "text"),
  ];
}

/** What has no name goes by its kind and its number among those that are left. */
function nameOf(members: readonly MarkingMember[], { design }: PanelLayout): string {
  const [first, ...others] = members;
  if (first === undefined) return "";
  const { id, kind, written } = first.marking;
  if (written.keys["name"] !== undefined) return id;
  const gone = others.map(({ marking }) => marking.id);
  const left = design.markings.filter((one) => one.kind === kind && !gone.includes(one.id));
  return `${kind}-${left.findIndex((one) => one.id === id) + 1}`;
}

interface Screws {
  readonly screws: readonly PlacedFixing[];
  readonly layout: PanelLayout;
}

function screwPattern(from: Source, kind: PatternKind, on: Screws): Pattern {
  const { layout } = on;
  const regular = regularPlaces(on.screws, kind, asWritten);
  if (regular.kind === "refused") return noPattern(regular.why);
  const words = patternWords(kind, regular, usualUnit(from.text));
  const item = `{ ${kind}: { ${words.numbers}, x: ${words.x}, y: ${words.y} } }`;
  const all = layout.fixings.filter((one) => one.kind === "screw");
  const isPicked = (one: PlacedFixing): boolean => on.screws.some(({ id }) => id === one.id);
  // It stands in the list where the first of them stood.
  const before = all.findIndex(isPicked);
  const names = on.screws.map((_, index) => `fixing.${before + index + 1}`);
  const { says } = words;
  if (layout.design.fixings?.at != null)
    return { edit: screwsJoined(from, item, on), says, names, offer: null };
  const unit = usualUnit(from.text);
  const items = all.flatMap((one, index): readonly string[] => {
    if (index === before) return [item];
    const { x, y } = one.at;
    return isPicked(one) ? [] : [`{ x: ${lengthIn(unit, x)}, y: ${lengthIn(unit, y)} }`];
  });
  return {
    edit: setKey(from, ["fixings"], { key: "at", value: `[${items.join(", ")}]` }),
    says,
    names,
    offer: {
      why: "the rule for screws and dowels sets the screws",
      title: `Write down where all ${all.length} screws stand, these as a ${says}`,
    },
  };
}

function screwsJoined(from: Source, item: string, { screws, layout }: Screws): Edit {
  const paths = screws.map(({ entry }) => entryPath(from, entry, layout));
  const indexes = paths.flatMap((path) => (path === null ? [] : [Number(path[2])]));
  const list = ["fixings", "at"];
  const [first, ...others] = indexes.toSorted((a, b) => a - b);
  const node = first === undefined ? null : nodeAt(from, [...list, `${first}`]);
  if (node === null || indexes.length < screws.length)
    return { kind: "refused", why: "the text does not say where each of them stands" };
  return rewritten(from, [
    (now) => ({ kind: "edit", edit: replaceValue(now, node.span, item) }),
    ...others.toReversed().map(
      (index): Step =>
        (now) =>
          removeItem(now, list, index),
    ),
  ]);
}
