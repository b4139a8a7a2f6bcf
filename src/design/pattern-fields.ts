// Several of one part, set out together: row, column, grid, ring. The place stands among the pattern's own keys.

import { degrees } from "../geometry/quantity.ts";
import { type Field, type Reading, read, refined } from "./field.ts";
import { type Key, optional, type RecordOf, record, required, usual } from "./fields.ts";
import { someMillimetres } from "./length-fields.ts";
import { angle, count } from "./number-fields.ts";
import type { PatternDesign, PlaceDesign } from "./panel-design.ts";
import { PATTERN_KINDS } from "./pattern-kinds.ts";
import { hasPlace, PLACE_KEYS, type PlaceValues, placeOf } from "./place-fields.ts";
import { name } from "./text-fields.ts";
import type { TextNode } from "./text-node.ts";
import { UNTURNED } from "./usual-values.ts";

/** A pattern as it was written; its place may stand beside it instead. */
export interface PlacedPattern {
  readonly at: PlaceDesign | null;
  readonly pattern: PatternDesign;
  readonly members: number;
}

/** The same of components: their part may stand beside it too. */
export interface ReadPattern extends PlacedPattern {
  readonly part: string | null;
}

export interface PatternReading {
  readonly key: string;
  readonly reading: ReadPattern;
}

/** More members than this are a slip; no panel has room for them. */
const MOST_MEMBERS = 200;

const COMMON_KEYS = {
  ...PLACE_KEYS,
  part: optional(name("the name of a part"), "The kind of thing, from the catalogue"),
};

/** A pattern's own numbers, and how many they set out. */
export interface PatternShape<Pattern extends PatternDesign = PatternDesign> {
  readonly pattern: Pattern;
  readonly members: number;
}

const members = (what: string): Key<number> =>
  required(count("a count", { least: 1, most: MOST_MEMBERS }), what);

const PITCH = required(someMillimetres("a pitch"), "From one centre to the next");

export const ROW_KEYS = { count: members("How many"), pitch: PITCH };

type Of<Kind extends PatternDesign["kind"]> = PatternDesign & { readonly kind: Kind };

export const rowShape = (
  kind: "row" | "column",
  { count: number, pitch, written }: RecordOf<typeof ROW_KEYS>,
): PatternShape<Of<"row" | "column">> => ({
  pattern: { kind, count: number, pitch, written },
  members: number,
});

export const GRID_KEYS = {
  columns: members("How many across"),
  rows: members("How many down"),
  pitch: PITCH,
  "row-pitch": optional(
    someMillimetres("a pitch"),
    "From one row to the next; as across where it is not said",
  ),
};

export const gridShape = (values: RecordOf<typeof GRID_KEYS>): PatternShape<Of<"grid">> => {
  const { columns, rows, pitch, written } = values;
  const rowPitch = values["row-pitch"] ?? pitch;
  return {
    pattern: { kind: "grid", columns, rows, pitch, rowPitch, written },
    members: columns * rows,
  };
};

export const RING_KEYS = {
  count: members("How many"),
  radius: required(someMillimetres("a radius"), "From the ring's centre to its members"),
  from: usual(angle("an angle"), {
    value: UNTURNED,
    about: "Of the first member, clockwise from twelve",
  }),
  step: optional(
    angle("an angle"),
    "From one member to the next, clockwise; evenly all round where it is not said",
  ),
};

const FULL_TURN = 360;

export const ringShape = (values: RecordOf<typeof RING_KEYS>): PatternShape<Of<"ring">> => {
  const { count: number, radius, from, written } = values;
  const step = values.step ?? degrees(FULL_TURN / number);
  return { pattern: { kind: "ring", count: number, radius, from, step, written }, members: number };
};

const inRow = (kind: "row" | "column"): Field<ReadPattern> =>
  refined(record(`a ${kind}`, { ...COMMON_KEYS, ...ROW_KEYS }), (values, node) =>
    ofPart(values, node, rowShape(kind, values)),
  );

const GRID: Field<ReadPattern> = refined(
  record("a grid", { ...COMMON_KEYS, ...GRID_KEYS }),
  (values, node) => ofPart(values, node, gridShape(values)),
);

const RING: Field<ReadPattern> = refined(
  record("a ring", { ...COMMON_KEYS, ...RING_KEYS }),
  (values, node) => ofPart(values, node, ringShape(values)),
);

/** What says how several are set out, where it stands. */
export const PATTERN_ABOUT = {
  row: "Several in a row, from the left",
  column: "Several in a column, from the top",
  grid: "Several in rows and columns, from the upper left",
  ring: "Several round a centre, clockwise",
};

export const PATTERN_KEYS = {
  row: optional(inRow("row"), PATTERN_ABOUT.row),
  column: optional(inRow("column"), PATTERN_ABOUT.column),
  grid: optional(GRID, PATTERN_ABOUT.grid),
  ring: optional(RING, PATTERN_ABOUT.ring),
};

/** The patterns that a component has written; more than one is a contradiction. */
export const patternKeysOf = (
  values: Readonly<Record<keyof typeof PATTERN_KEYS, ReadPattern | null>>,
): readonly PatternReading[] =>
  PATTERN_KINDS.flatMap((key) => {
    const reading = values[key];
    return reading === null ? [] : [{ key, reading }];
  });

const ofPart = (
  values: PlaceValues & { readonly part: string | null },
  node: TextNode,
  shape: PatternShape,
): Reading<ReadPattern> => {
  const reading = placed(values, node, shape);
  return reading.kind === "read"
    ? { ...reading, value: { ...reading.value, part: values.part } }
    : reading;
};

/** With the place that stands among a pattern's own keys. */
export const placed = (
  values: PlaceValues,
  node: TextNode,
  shape: PatternShape,
): Reading<PlacedPattern> => {
  if (!hasPlace(values)) {
    return read({ ...shape, at: null }, node);
  }
  const at = placeOf(values, node);
  return at.kind === "read" ? read({ ...shape, at: at.value }, node) : at;
};
