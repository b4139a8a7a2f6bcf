// The numbers of a row, column, grid or ring, as they are typed: changes of the panel's text. A count takes the list of its
// members' legends along, and lets no word go. Pure: the text in, an edit out.

import { type Edit, nodeAt, type Path, setKey } from "../../src/design/edit.ts";
import { usualUnit } from "../../src/design/length-text.ts";
import { PATTERN_KINDS } from "../../src/design/pattern-kinds.ts";
import { rewritten, type Step } from "../../src/design/rewriting.ts";
import type { Source } from "../../src/design/source.ts";
import { angleTyped } from "./angle-typed.ts";
import { legendsSet, NO_LEGEND, nameAt, writtenLegends } from "./legend-edits.ts";
import { sizeTyped } from "./length-typed.ts";

const TAKES = {
  count: "count",
  columns: "count",
  rows: "count",
  pitch: "length",
  "row-pitch": "length",
  radius: "length",
  from: "angle",
  step: "angle",
} as const;

export type PatternKey = keyof typeof TAKES;

export interface PatternNumber {
  readonly key: PatternKey;
  /** As it is written. */
  readonly value: string;
}

/** Those that the text says, in the order of the table above. */
export function patternNumbers(from: Source, owner: Path): readonly PatternNumber[] {
  const path = patternPath(from, owner);
  const node = path === null ? null : nodeAt(from, path);
  if (node?.kind !== "map") return [];
  return PATTERN_KEYS.flatMap((key) => {
    const value = node.entries.find((one) => one.key === key)?.value;
    return value?.kind === "scalar" ? [{ key, value: value.text }] : [];
  });
}

const isPatternKey = (key: string): key is PatternKey => Object.hasOwn(TAKES, key);

const PATTERN_KEYS: readonly PatternKey[] = Object.keys(TAKES).filter(isPatternKey);

/** `owner`: of the component, the marking, or the item of the screws' list that it stands in. */
function patternPath(from: Source, owner: Path): Path | null {
  const kind = PATTERN_KINDS.find((key) => nodeAt(from, [...owner, key]) !== null);
  return kind === undefined ? null : [...owner, kind];
}

/** The reader judges what is a number of its kind; nothing else comes into the text from a field. */
export function patternTyped(from: Source, owner: Path, { key, value }: PatternNumber): Edit {
  const path = patternPath(from, owner);
  const typed = value.trim();
  if (path === null) return refused(`${nameAt(from, owner)} is no row, column, grid or ring`);
  switch (TAKES[key]) {
    case "length": {
      const length = sizeTyped(typed, usualUnit(from.text));
      return length.kind === "length"
        ? setKey(from, path, { key, value: length.text })
        : refused(`${key}: ${length.why}`);
    }
    case "angle": {
      const angle = angleTyped(typed);
      return angle.kind === "angle"
        ? setKey(from, path, { key, value: angle.text })
        : refused(`${key}: ${angle.why}`);
    }
    case "count":
      return /^[1-9]\d{0,2}$/.test(typed)
        ? counted(from, owner, { path, key, count: Number(typed) })
        : refused(`${key}: "${typed}" is no count from 1 to 999; write 4`);
  }
}

interface Count {
  readonly path: Path;
  readonly key: PatternKey;
  readonly count: number;
}

function counted(from: Source, owner: Path, { path, key, count }: Count): Edit {
  const value = `${count}`;
  const set: Step = (now) => setKey(now, path, { key, value });
  const items = writtenLegends(from, owner);
  if (items === null) return set(from);
  const number = (of: PatternKey): number => {
    const node = nodeAt(from, [...path, of]);
    return node?.kind === "scalar" ? Number(node.text) : 1;
  };
  const isGrid = path.at(-1) === "grid";
  const before = isGrid
    ? { columns: number("columns"), rows: number("rows") }
    : { columns: number("count"), rows: 1 };
  const after = {
    columns: key === "rows" ? before.columns : count,
    rows: key === "rows" ? count : before.rows,
  };
  if (items.some((item) => item.includes("\n")))
    return refused(
      `the legends of ${nameAt(from, owner)} take a line each and more: change them in the text`,
    );
  const gone = items.filter(
    (item, index) =>
      item !== NO_LEGEND &&
      (index % before.columns >= after.columns || Math.floor(index / before.columns) >= after.rows),
  );
  if (gone.length > 0)
    return refused(`${gone.join(", ")} would go with the members: take these legends off first`);
  const kept = Array.from({ length: after.rows * after.columns }, (_, index) => {
    const [row, column] = [Math.floor(index / after.columns), index % after.columns];
    const isKept = row < before.rows && column < before.columns;
    return (isKept ? items[row * before.columns + column] : undefined) ?? NO_LEGEND;
  });
  return rewritten(from, [set, (now) => legendsSet(now, owner, kept)]);
}

const refused = (why: string): Edit => ({ kind: "refused", why });
