// A row, a column or a ring made of a selection: one entry in the place of several. All must be of one part and say the same
// of everything but place and legend; pitch and radius are what they stand at on the average, and are told.

import { type Edit, nodeAt, removeKey, replaceValue, setKey } from "../../src/design/edit.ts";
import { lengthIn, usualUnit } from "../../src/design/length-text.ts";
import { renamedReferences } from "../../src/design/name-references.ts";
import { difference, rewritten, type Step } from "../../src/design/rewriting.ts";
import type { Source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { decimal } from "../../src/geometry/number.ts";
import type { PanelLayout, PlacedComponent } from "../../src/layout/panel-layout.ts";
import { FULL_TURN } from "./clock-angle.ts";
import { type PatternKind, regularPlaces } from "./regular-places.ts";

export interface Pattern {
  readonly edit: Edit;
  /** What was made, with its number: "row of 3, pitch 20 mm". */
  readonly says: string;
  readonly name: string;
}

const refused = (why: string): Pattern => ({ edit: { kind: "refused", why }, says: "", name: "" });

export function patternOf(
  from: Source,
  kind: PatternKind,
  { entries, layout }: { readonly entries: readonly string[]; readonly layout: PanelLayout },
): Pattern {
  const members = entries.flatMap((entry) =>
    layout.components.filter((component) => component.entry === entry),
  );
  if (members.length > entries.length) return refused("one of them is a pattern already");
  const unlike = unlikeAmong(from, entries);
  if (unlike !== null) return refused(unlike);
  const set = setOut(kind, members, usualUnit(from.text));
  if (set.kind === "refused") return refused(set.why);
  return { ...set, edit: made(from, { ...set, key: kind }) };
}

/** What they say apart from place and legend must be alike, since one entry says it for all. */
function unlikeAmong(from: Source, entries: readonly string[]): string | null {
  const [first = "", ...others] = entries.map((entry) => saidBy(from, entry));
  const odd = others.findIndex((said) => said !== first);
  return odd < 0
    ? null
    : `${entries[0]} and ${entries[odd + 1]} say different things of themselves`;
}

const OWN = ["at", "legend"];

const saidBy = (from: Source, entry: string): string => {
  const node = nodeAt(from, ["components", entry]);
  if (node?.kind !== "map") return "";
  return node.entries
    .filter(({ key }) => !OWN.includes(key))
    .map(({ key, value }) => `${key}: ${from.text.slice(value.span.start, value.span.end).trim()}`)
    .sort()
    .join("\n");
};

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
  const { order: members, places } = regular;
  const length = (value: number): string => lengthIn(unit, value);
  const x = length(Math.min(...places.map((place) => place.x)));
  const y = length(Math.min(...places.map((place) => place.y)));
  const measure =
    regular.kind === "ring"
      ? `radius: ${length(regular.radius)}`
      : `pitch: ${length(regular.pitch)}`;
  const from =
    regular.kind === "ring" && regular.from !== 0 ? `, from: ${decimal(regular.from, 2)} deg` : "";
  const [{ entry: name, part }, count] = [members[0]!, members.length];
  return {
    kind: "set",
    name,
    members,
    value: `{ part: ${part.id}, count: ${count}, ${measure}${from}, x: ${x}, y: ${y} }`,
    says: `${kind} of ${count}, ${measure.replace(":", "")}`,
  };
}

/** Hundredths of a degree; a first one that lies by less before twelve stands at twelve. */
const asWritten = (angle: number): number => Number(decimal(angle, 2)) % FULL_TURN;

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
