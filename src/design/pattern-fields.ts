// Several of one part, set out together: row, column, grid, ring. The place stands among the pattern's own keys.

import { degrees } from "../geometry/quantity.ts";
import { type Field, type Reading, read, refined } from "./field.ts";
import { type Key, optional, record, required, usual } from "./fields.ts";
import { someMillimetres } from "./length-fields.ts";
import { angle, count } from "./number-fields.ts";
import type { PatternDesign, PlaceDesign } from "./panel-design.ts";
import { hasPlace, PLACE_KEYS, type PlaceValues, placeOf } from "./place-fields.ts";
import { name } from "./text-fields.ts";
import type { TextNode } from "./text-node.ts";
import { UNTURNED } from "./usual-values.ts";

/** A pattern as it was written; part and place may stand beside it instead. */
export interface ReadPattern {
  readonly part: string | null;
  readonly at: PlaceDesign | null;
  readonly pattern: PatternDesign;
  readonly members: number;
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

const members = (what: string): Key<number> =>
  required(count("a count", { least: 1, most: MOST_MEMBERS }), what);

const PITCH = required(someMillimetres("a pitch"), "From one centre to the next");

const inRow = (kind: "row" | "column"): Field<ReadPattern> =>
  refined(
    record(`a ${kind}`, { ...COMMON_KEYS, count: members("How many"), pitch: PITCH }),
    (values, node) =>
      placed(values, node, {
        pattern: { kind, count: values.count, pitch: values.pitch },
        members: values.count,
      }),
  );

const GRID: Field<ReadPattern> = refined(
  record("a grid", {
    ...COMMON_KEYS,
    columns: members("How many across"),
    rows: members("How many down"),
    pitch: PITCH,
    "row-pitch": optional(
      someMillimetres("a pitch"),
      "From one row to the next; as across where it is not said",
    ),
  }),
  (values, node) => {
    const { columns, rows, pitch } = values;
    const rowPitch = values["row-pitch"] ?? pitch;
    return placed(values, node, {
      pattern: { kind: "grid", columns, rows, pitch, rowPitch },
      members: columns * rows,
    });
  },
);

const RING: Field<ReadPattern> = refined(
  record("a ring", {
    ...COMMON_KEYS,
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
  }),
  (values, node) => {
    const { count: number, radius, from } = values;
    const step = values.step ?? degrees(FULL_TURN / number);
    return placed(values, node, {
      pattern: { kind: "ring", count: number, radius, from, step },
      members: number,
    });
  },
);

const FULL_TURN = 360;

export const PATTERN_KEYS = {
  row: optional(inRow("row"), "Several in a row, from the left"),
  column: optional(inRow("column"), "Several in a column, from the top"),
  grid: optional(GRID, "Several in rows and columns, from the upper left"),
  ring: optional(RING, "Several round a centre, clockwise"),
};

/** The patterns that a component has written; more than one is a contradiction. */
export const patternKeysOf = (
  values: Readonly<Record<keyof typeof PATTERN_KEYS, ReadPattern | null>>,
): readonly PatternReading[] =>
  (["row", "column", "grid", "ring"] as const).flatMap((key) => {
    const reading = values[key];
    return reading === null ? [] : [{ key, reading }];
  });

const placed = (
  values: PlaceValues & { readonly part: string | null },
  node: TextNode,
  { pattern, members: number }: Pick<ReadPattern, "pattern" | "members">,
): Reading<ReadPattern> => {
  const { part } = values;
  if (!hasPlace(values)) {
    return read({ part, at: null, pattern, members: number }, node);
  }
  const at = placeOf(values, node);
  return at.kind === "read" ? read({ part, at: at.value, pattern, members: number }, node) : at;
};
