// A row, a column or a ring made of a selection: one entry in the place of several. All must be of one part and say the same
// of everything but place and legend; pitch and radius are what they stand at on the average, and are told.

import { type Edit, nodeAt, removeKey, replaceValue, setKey } from "../../src/design/edit.ts";
import { lengthIn, usualUnit } from "../../src/design/length-text.ts";
import { renamedReferences } from "../../src/design/name-references.ts";
import { difference, rewritten, type Step } from "../../src/design/rewriting.ts";
import type { Source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { point } from "../../src/geometry/contour.ts";
import { decimal } from "../../src/geometry/number.ts";
import { pointDistance } from "../../src/geometry/point.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { arcTangent2, clockDirection, toDegrees } from "../../src/geometry/trigonometry.ts";
import type { PanelLayout, PlacedComponent } from "../../src/layout/panel-layout.ts";

export type PatternKind = "row" | "column" | "ring";

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
  const least = kind === "ring" ? 3 : 2;
  if (members.length < least) return refused(`a ${kind} takes ${least} or more`);
  if (members.length > entries.length) return refused("one of them is a pattern already");
  const unlike = unlikeAmong(from, entries);
  if (unlike !== null) return refused(unlike);
  const set = setOut(kind, members, usualUnit(from.text));
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
  readonly name: string;
  readonly members: readonly PlacedComponent[];
  /** The pattern's own value as flow text. */
  readonly value: string;
  readonly says: string;
}

function setOut(kind: PatternKind, members: readonly PlacedComponent[], unit: "mm" | "in"): SetOut {
  const length = (value: number): string => lengthIn(unit, value);
  if (kind === "ring") return ringOf(members, length);
  const sorted = members.toSorted((a, b) => (kind === "row" ? a.at.x - b.at.x : b.at.y - a.at.y));
  const [first, last] = [sorted[0]!, sorted.at(-1)!];
  const span = kind === "row" ? last.at.x - first.at.x : first.at.y - last.at.y;
  const pitch = length(span / (sorted.length - 1));
  const low = {
    x: Math.min(...members.map(({ at }) => at.x)),
    y: mean(members.map(({ at }) => at.y)),
  };
  const at =
    kind === "row"
      ? low
      : { x: mean(members.map(({ at }) => at.x)), y: Math.min(...members.map(({ at }) => at.y)) };
  const counted = `count: ${sorted.length}, pitch: ${pitch}`;
  return {
    name: first.entry,
    members: sorted,
    value: `{ part: ${first.part.id}, ${counted}, x: ${length(at.x)}, y: ${length(at.y)} }`,
    says: `${kind} of ${sorted.length}, pitch ${pitch}`,
  };
}

function ringOf(members: readonly PlacedComponent[], length: (value: number) => string): SetOut {
  const centre = point(mean(members.map(({ at }) => at.x)), mean(members.map(({ at }) => at.y)));
  const clock = ({ at }: PlacedComponent): number =>
    toDegrees(arcTangent2(at.x - centre.x, at.y - centre.y));
  const first = clock(members[0]!);
  // As it is written: hundredths of a degree.
  const from = Number(decimal((first + FULL_TURN) % FULL_TURN, 2));
  const turned = (component: PlacedComponent): number =>
    (clock(component) - first + 2 * FULL_TURN) % FULL_TURN;
  const sorted = members.toSorted((a, b) => turned(a) - turned(b));
  const radius = mean(members.map(({ at }) => pointDistance(at, centre)));
  const places = sorted.map((_, index) => {
    const toward = clockDirection(degrees(from + (index * FULL_TURN) / sorted.length));
    return { x: centre.x + radius * toward.x, y: centre.y + radius * toward.y };
  });
  const low = {
    x: Math.min(...places.map(({ x }) => x)),
    y: Math.min(...places.map(({ y }) => y)),
  };
  const start = from === 0 ? "" : `, from: ${decimal(from, 2)} deg`;
  const part = `part: ${members[0]!.part.id}, count: ${sorted.length}`;
  return {
    name: members[0]!.entry,
    members: sorted,
    value: `{ ${part}, radius: ${length(radius)}${start}, x: ${length(low.x)}, y: ${length(low.y)} }`,
    says: `ring of ${sorted.length}, radius ${length(radius)}`,
  };
}

const FULL_TURN = 360;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

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
