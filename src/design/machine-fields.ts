// Machines: what they can hold, how finely they work, and what was measured on them.

import type { Mm } from "../geometry/quantity.ts";
import { byWord } from "./choice-fields.ts";
import { type Field, mapped, read, refined } from "./field.ts";
import { type Key, list, optional, record, required, tuple, usual } from "./fields.ts";
import { millimetres, noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import { lengthList } from "./length-list.ts";
import { undated } from "./stock-fields.ts";
import { date, name, oneOf } from "./text-fields.ts";
import { NOTHING } from "./usual-values.ts";
import type {
  ClearanceClasses,
  DrillDesign,
  KerfReading,
  LaserDesign,
  PrinterDesign,
  RouterDesign,
  SizeAllowance,
} from "./workshop-design.ts";

/** A machine without its name, which is the key it stands under. */
export type NamelessMachine =
  | Omit<LaserDesign, "id">
  | Omit<RouterDesign, "id">
  | Omit<DrillDesign, "id">
  | Omit<PrinterDesign, "id">;

const BED = required(
  tuple("the bed", someMillimetres("a length"), ["width", "depth"]),
  "What it can hold: width and depth",
);

const KERF_PAIR = tuple("the kerf", noOrSomeMillimetres("a width"), ["across x", "across y"]);
const KERF_ALONE: Field<readonly [Mm, Mm]> = mapped(
  noOrSomeMillimetres("a width"),
  (kerf) => [kerf, kerf] as const,
);

/** One number for both directions, or one across x and one across y. */
const KERF: Field<readonly [Mm, Mm]> = {
  what: "a kerf, or two: across x and across y",
  schema: { anyOf: [KERF_ALONE.schema, KERF_PAIR.schema] },
  read: (node, source) => (node.kind === "list" ? KERF_PAIR : KERF_ALONE).read(node, source),
};

const KERF_READING: Field<KerfReading> = refined(
  record("a reading", {
    stock: required(name("the name of a stock"), "The stock it was measured in"),
    kerf: required(KERF, "Full width of the cut, across x and across y"),
    "hole-allowance": usual(millimetres("an allowance", { least: -5, most: 5 }), {
      value: NOTHING,
      about: "Added to a hole's diameter beside the kerf, from the row of gauges",
    }),
    dated: optional(date("a date"), "When it was measured"),
  }),
  ({ stock, kerf, "hole-allowance": holeAllowance, dated, written }, node) =>
    read(
      { stock, kerf, holeAllowance, dated, written },
      node,
      undated(node, { measured: kerf, dated, written }),
    ),
);

const LASER_KEYS = {
  bed: BED,
  spot: required(someMillimetres("a width"), "Width of the line that it engraves"),
  kerf: required(
    oneOf("who compensates the kerf", ["in-file", "left-to-cutter"]),
    "in-file: the files are compensated; left-to-cutter: they are nominal",
  ),
  measured: usual(list("readings", KERF_READING, { leaveOut: true }), {
    value: [],
    about: "Kerf as measured with the test piece, by stock",
  }),
};

const type = <const Type extends string>(
  word: Type,
): { readonly type: ReturnType<typeof required<Type>> } => ({
  type: required(oneOf("a type of machine", [word]), "The type of machine"),
});

const laser = (kind: LaserDesign["kind"]): Field<NamelessMachine> =>
  mapped(
    record("a laser", { ...type(kind), ...LASER_KEYS }),
    ({ bed, spot, kerf, measured, written }): NamelessMachine => ({
      kind,
      bed,
      spot,
      kerf,
      measured,
      written,
    }),
  );

const ROUTER: Field<NamelessMachine> = mapped(
  record("a router", {
    ...type("router"),
    bed: BED,
    tools: required(
      list(
        "a list of tools",
        record("a tool", { diameter: required(someMillimetres("a diameter"), "Cutting diameter") }),
        { least: 1, most: 100 },
      ),
      "The tools there are",
    ),
  }),
  ({ bed, tools, written }): NamelessMachine => ({
    kind: "router",
    bed,
    tools: tools.map(({ diameter }) => ({ diameter })),
    written,
  }),
);

const DRILL_BENCH: Field<NamelessMachine> = mapped(
  record("a drill bench", {
    ...type("drill-bench"),
    bed: BED,
    drills: required(lengthList("a list of diameters"), "The drills there are"),
  }),
  ({ bed, drills, written }): NamelessMachine => ({ kind: "drill-bench", bed, drills, written }),
);

const allowances = (what: string, upTo: string): Field<readonly SizeAllowance[]> =>
  mapped(
    list(
      what,
      record("an allowance", {
        to: required(someMillimetres("a diameter"), upTo),
        add: required(millimetres("an allowance", { least: -5, most: 5 }), "Added to the diameter"),
      }),
      { most: 50 },
    ),
    (rows) => rows.map(({ to, add }) => ({ to, add })),
  );

const clearance = (fit: string): Key<Mm> =>
  required(noOrSomeMillimetres("a clearance"), `A side, for a ${fit} fit`);

const CLEARANCES: Field<ClearanceClasses> = mapped(
  record("clearances", {
    press: clearance("press"),
    snug: clearance("snug"),
    sliding: clearance("sliding"),
    loose: clearance("loose"),
  }),
  ({ press, snug, sliding, loose }) => ({ press, snug, sliding, loose }),
);

const PRINTER: Field<NamelessMachine> = mapped(
  record("a printer", {
    ...type("printer"),
    bed: required(
      tuple("the bed", someMillimetres("a length"), ["width", "depth", "height"]),
      "What it can hold: width, depth and height",
    ),
    line: required(someMillimetres("a width"), "Width of a printed line"),
    layer: required(someMillimetres("a thickness"), "Thickness of a layer"),
    holes: usual(allowances("what holes need", "Holes up to this diameter"), {
      value: [],
      about: "What is added to a hole's diameter, by size",
    }),
    pegs: usual(allowances("what pegs need", "Pegs up to this diameter"), {
      value: [],
      about: "What is added to a peg's diameter, by size: most often less than nothing",
    }),
    "first-layer": optional(
      noOrSomeMillimetres("a length"),
      "How far its first layer spreads beyond the outline",
    ),
    clearances: optional(CLEARANCES, "Clearance a side by class of fit, from the test piece"),
  }),
  ({
    bed,
    line,
    layer,
    holes,
    pegs,
    "first-layer": firstLayer,
    clearances,
    written,
  }): NamelessMachine => ({
    kind: "printer",
    bed,
    line,
    layer,
    holes,
    pegs,
    firstLayer,
    clearances,
    written,
  }),
);

/** To add a type of machine: its case in the workshop's types, its record above, its line here. */
export const MACHINE: Field<NamelessMachine> = byWord("a machine", "type", {
  "co2-laser": laser("co2-laser"),
  "diode-laser": laser("diode-laser"),
  router: ROUTER,
  "drill-bench": DRILL_BENCH,
  printer: PRINTER,
});
