// Where something stands that is no component: by its place, or several of it set out together in a row, column, grid or ring.
// The words are those of components; what is set out stands under its own key, so that a pattern names no part.

import { type Field, mapped, type Reading, read, refined, unread } from "./field.ts";
import { optional, record } from "./fields.ts";
import { bothSaid, missing } from "./key-findings.ts";
import type { PatternDesign, PlaceDesign } from "./panel-design.ts";
import {
  GRID_KEYS,
  gridShape,
  PATTERN_ABOUT,
  type PatternShape,
  type PlacedPattern,
  placed,
  RING_KEYS,
  ROW_KEYS,
  ringShape,
  rowShape,
} from "./pattern-fields.ts";
import { PATTERN_KINDS } from "./pattern-kinds.ts";
import { PLACE_KEYS, place } from "./place-fields.ts";
import type { TextNode } from "./text-node.ts";
import type { Written } from "./written.ts";

const inRow = (kind: "row" | "column"): Field<PlacedPattern> =>
  refined(record(`a ${kind}`, { ...PLACE_KEYS, ...ROW_KEYS }), (values, node) =>
    placed(values, node, rowShape(kind, values)),
  );

const GRID: Field<PlacedPattern> = refined(
  record("a grid", { ...PLACE_KEYS, ...GRID_KEYS }),
  (values, node) => placed(values, node, gridShape(values)),
);

const RING: Field<PlacedPattern> = refined(
  record("a ring", { ...PLACE_KEYS, ...RING_KEYS }),
  (values, node) => placed(values, node, ringShape(values)),
);

/** The keys of what has one place; its place may stand in the pattern. */
export const SET_OUT_KEYS = {
  row: optional(inRow("row"), PATTERN_ABOUT.row),
  column: optional(inRow("column"), PATTERN_ABOUT.column),
  grid: optional(GRID, PATTERN_ABOUT.grid),
  ring: optional(RING, PATTERN_ABOUT.ring),
};

export interface SetOut {
  readonly at: PlaceDesign;
  readonly pattern: PatternDesign | null;
  readonly members: number;
}

type SetOutValues = Readonly<Record<keyof typeof SET_OUT_KEYS, PlacedPattern | null>> & {
  readonly at: PlaceDesign | null;
  readonly written: Written;
};

/** `about`: what its place is, where none is written. */
export const setOutOf = (values: SetOutValues, node: TextNode, about: string): Reading<SetOut> => {
  const { at, written } = values;
  const keys = PATTERN_KINDS.filter((key) => values[key] !== null);
  const [key] = keys;
  const pattern = key === undefined ? null : values[key];
  if (keys.length > 1) return unread(node, bothSaid(node, keys, written));
  if (pattern === null || key === undefined) {
    return at === null
      ? unread(node, missing(node, "at", about))
      : read({ at, pattern: null, members: 1 }, node);
  }
  const stands = pattern.at ?? at;
  if (pattern.at !== null && at !== null)
    return unread(node, bothSaid(node, ["at", `${key}'s place`], written));
  return stands === null
    ? unread(node, missing(node, "at", `where the ${key} stands`))
    : read({ at: stands, pattern: pattern.pattern, members: pattern.members }, node);
};

type LinePattern = Exclude<PatternDesign, { readonly kind: "ring" }>;
type LineShape = PatternShape<LinePattern>;

const linesIn = (kind: "row" | "column"): Field<LineShape> =>
  mapped(record(`a ${kind}`, ROW_KEYS), (values) => rowShape(kind, values));

/** The keys of a line or an arrow: its ends say where the first one stands. */
export const LINE_SET_OUT_KEYS = {
  row: optional(linesIn("row"), PATTERN_ABOUT.row),
  column: optional(linesIn("column"), PATTERN_ABOUT.column),
  grid: optional(
    mapped(record("a grid", GRID_KEYS), (values): LineShape => gridShape(values)),
    PATTERN_ABOUT.grid,
  ),
};

/** null for one line by itself. */
export const linePatternOf = (
  values: Readonly<Record<keyof typeof LINE_SET_OUT_KEYS, LineShape | null>> & {
    readonly written: Written;
  },
  node: TextNode,
): Reading<LinePattern | null> => {
  const keys = (["row", "column", "grid"] as const).filter((key) => values[key] !== null);
  const [key] = keys;
  return keys.length > 1
    ? unread(node, bothSaid(node, keys, values.written))
    : read((key === undefined ? null : values[key])?.pattern ?? null, node);
};

const SET_OUT: Field<SetOut> = refined(
  record("several places", {
    at: optional(place(), "Where the first one stands"),
    ...SET_OUT_KEYS,
  }),
  (values, node) => setOutOf(values, node, "where they stand"),
);

/** An item of a list of places: one, or several set out together. */
export const PLACE_OR_SEVERAL: Field<SetOut> = {
  what: place().what,
  schema: { anyOf: [place().schema, SET_OUT.schema], description: place().what },
  read: (node, source) => (isSetOut(node) ? SET_OUT : ONE).read(node, source),
};

const ONE: Field<SetOut> = mapped(place(), (at) => ({ at, pattern: null, members: 1 }));

const isSetOut = (node: TextNode): boolean =>
  node.kind === "map" && node.entries.some(({ key }) => Object.hasOwn(SET_OUT_KEYS, key));
