// A row, a column or a ring made of a selection: one entry in the place of several. All must be of one part and say the same
// of everything but place and legend; pitch and radius are what they stand at on the average, and are told.

import { type Edit, nodeAt, removeKey, replaceValue, setKey } from "../../src/design/edit.ts";
import { usualUnit } from "../../src/design/length-text.ts";
import { renamedReferences } from "../../src/design/name-references.ts";
import { difference, rewritten, type Step } from "../../src/design/rewriting.ts";
import type { Source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import type { PanelLayout, PlacedComponent } from "../../src/layout/panel-layout.ts";
import { asWritten, patternWords, unlikeAmong } from "./pattern-words.ts";
import { type PatternKind, regularPlaces } from "./regular-places.ts";

export interface Pattern {
  readonly edit: Edit;
  /** What was made, with its number: "row of 3, pitch 20 mm". */
  readonly says: string;
  /** What is picked then: its entry, or its members where they go by numbers. */
  readonly names: readonly string[];
  /** It takes more than was asked; null where nothing else is written. */
  readonly offer: { readonly why: string; readonly title: string } | null;
}

export const noPattern = (why: string): Pattern => ({
  edit: { kind: "refused", why },
  says: "",
  names: [],
  offer: null,
});

/** What each says of itself alone. */
const OWN = ["at", "legend"];

export function patternOf(
  from: Source,
  kind: PatternKind,
  { entries, layout }: { readonly entries: readonly string[]; readonly layout: PanelLayout },
): Pattern {
  const members = entries.flatMap((entry) =>
    layout.components.filter((component) => component.entry === entry),
  );
  if (members.length > entries.length) return noPattern("one of them is a pattern already");
  const written = entries.map((entry) => ({ entry, path: ["components", entry] }));
  const unlike = unlikeAmong(from, written, OWN);
  if (unlike !== null) return noPattern(unlike);
  const set = setOut(kind, members, usualUnit(from.text));
  if (set.kind === "refused") return noPattern(set.why);
  const edit = made(from, { ...set, key: kind });
  return { edit, says: set.says, names: [set.name], offer: null };
}

interface SetOut {
  readonly kind: "set";
  readonly name: string;
  readonly members: readonly PlacedComponent[];
  /** The pattern's own value as flow text. */
  readonly value: string;
  readonly says: string;
}

function setOut(
  kind: PatternKind,
  placed: readonly PlacedComponent[],
  unit: "mm" | "in",
): SetOut | { readonly kind: "refused"; readonly why: string } {
  const regular = regularPlaces(placed, kind, asWritten);
  if (regular.kind === "refused") return regular;
  const { order: members } = regular;
  const { numbers, x, y, says } = patternWords(kind, regular, unit);
  const { entry: name, part } = members[0]!;
  const value = `{ part: ${part.id}, ${numbers}, x: ${x}, y: ${y} }`;
  return { kind: "set", name, members, value, says };
}

function made(
  from: Source,
  { name, members, value, key }: SetOut & { readonly key: PatternKind },
): Edit {
  const path = ["components", name];
  const legends = members.map(({ entry }) => legendOf(from, entry));
  const others = members.map(({ entry }) => entry).filter((entry) => entry !== name);
  // Whoever names one of them names the member that it becomes.
  const names = new Map(members.map(({ entry }, index) => [entry, `${name}.${index + 1}`]));
  const renamed = applyEdits(from.text, renamedReferences(from, names));
  if (renamed.kind === "refused") return renamed;
  const steps: readonly Step[] = [
    (now) => ({ kind: "edit", edit: difference(now, renamed.text) }),
    ...others.map(
      (entry): Step =>
        (now) =>
          removeKey(now, ["components"], entry),
    ),
    (now) => setKey(now, path, { key, value }),
    ...(legends.every((legend) => legend === '""')
      ? []
      : [(now: Source) => setKey(now, path, { key: "legends", value: `[${legends.join(", ")}]` })]),
    ...["part", "at", "legend"].map(
      (gone): Step =>
        (now) =>
          without(now, path, gone),
    ),
  ];
  return rewritten(from, steps);
}

const without = (from: Source, path: readonly string[], key: string): Edit =>
  nodeAt(from, [...path, key]) === null
    ? { kind: "edit", edit: replaceValue(from, { file: from.file, start: 0, end: 0 }, "") }
    : removeKey(from, path, key);

const legendOf = (from: Source, entry: string): string => {
  const node = nodeAt(from, ["components", entry, "legend"]);
  const text = node === null ? "" : from.text.slice(node.span.start, node.span.end).trim();
  return text === "" || text.includes("\n") ? '""' : text;
};
