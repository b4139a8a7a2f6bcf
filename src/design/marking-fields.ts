// Markings that belong to no single component: free legends, lines, arrows, borders, brackets, windows.

import { wrapped } from "./choice-fields.ts";
import { type Field, mapped, readOnce } from "./field.ts";
import { list, optional, record, required, usual } from "./fields.ts";
import { LEGEND, LEGEND_KEYS, SIDE } from "./legend-fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import type { MarkingDesign } from "./panel-design.ts";
import { place } from "./place-fields.ts";
import { name, oneOf, reference } from "./text-fields.ts";
import { BORDER_CORNER, BORDER_GAP, LEGEND_SIDE, WINDOW_CORNER } from "./usual-values.ts";

/** A marking gets its name from its text, or `border-2` from its kind and number. */
export type MaybeNamed<Marking> = Marking extends { readonly id: string }
  ? Omit<Marking, "id"> & { readonly id: string | null }
  : never;

export type ReadMarking = MaybeNamed<MarkingDesign>;

const NAME = optional(name("a name"), "Its name; kind and number where it is not said");
const WIDTH = optional(someMillimetres("a width"), "Width of the line");
const AROUND = required(
  list("a list of components", reference("the name of a component"), { least: 1, most: 200 }),
  "The components it goes round",
);
const GAP = usual(noOrSomeMillimetres("a gap"), {
  value: BORDER_GAP,
  about: "From the components",
});
const TITLE = optional(LEGEND, "What the group is called");

const FREE_LEGEND: Field<ReadMarking> = mapped(
  record("a legend by itself", {
    name: NAME,
    ...LEGEND_KEYS,
    at: required(place(), "Where it stands"),
    align: usual(oneOf("an alignment", ["left", "centre", "right"]), {
      value: "centre",
      about: "Which end of it stands there",
    }),
  }),
  ({ name: id, text, height, font, turn, alert, at, align, written }) => ({
    kind: "legend",
    id,
    legend: { text, height, font, turn, alert, side: LEGEND_SIDE, gap: null, written },
    at,
    align,
    written,
  }),
);

const stroke = (kind: "line" | "arrow"): Field<ReadMarking> =>
  mapped(
    record(kind === "line" ? "a line" : "an arrow", {
      name: NAME,
      from: required(place(), "Where it begins"),
      to: required(place(), kind === "line" ? "Where it ends" : "Where its head is"),
      width: WIDTH,
    }),
    ({ name: id, from, to, width, written }) => ({ kind, id, from, to, width, written }),
  );

const BORDER: Field<ReadMarking> = mapped(
  record("a border", {
    name: NAME,
    around: AROUND,
    gap: GAP,
    corner: usual(noOrSomeMillimetres("a radius"), {
      value: BORDER_CORNER,
      about: "Radius of its corners",
    }),
    width: WIDTH,
    legend: TITLE,
  }),
  ({ name: id, around, gap, corner, width, legend, written }) => ({
    kind: "border",
    id,
    around,
    gap,
    corner,
    width,
    legend,
    written,
  }),
);

const BRACKET: Field<ReadMarking> = mapped(
  record("a bracket", {
    name: NAME,
    around: AROUND,
    side: usual(SIDE, { value: LEGEND_SIDE, about: "On which side of the group" }),
    gap: GAP,
    width: WIDTH,
    legend: TITLE,
  }),
  ({ name: id, around, side, gap, width, legend, written }) => ({
    kind: "bracket",
    id,
    around,
    side,
    gap,
    width,
    legend,
    written,
  }),
);

const WINDOW: Field<ReadMarking> = mapped(
  record("a window", {
    name: NAME,
    at: required(place(), "Where its centre is"),
    width: required(someMillimetres("a width"), "Clear width"),
    height: required(someMillimetres("a height"), "Clear height"),
    corner: usual(noOrSomeMillimetres("a radius"), {
      value: WINDOW_CORNER,
      about: "Radius of its corners",
    }),
    layers: required(
      list("a list of layers", name("the name of a layer"), { least: 1, most: 20 }),
      "The layers that it opens",
    ),
  }),
  ({ name: id, at, width, height, corner, layers, written }) => ({
    kind: "window",
    id,
    at,
    width,
    height,
    corner,
    layers,
    written,
  }),
);

/** To add a kind of marking: its case in the design's types, its record above, its line here. */
const KINDS = {
  legend: FREE_LEGEND,
  line: stroke("line"),
  arrow: stroke("arrow"),
  border: BORDER,
  bracket: BRACKET,
  window: WINDOW,
};

/** Markings that can't be read are left out; their findings stay. */
export const MARKINGS: Field<readonly MarkingDesign[]> = mapped(
  list("a list of markings", readOnce(wrapped("a marking", KINDS)), { most: 2000, leaveOut: true }),
  (markings) => {
    const counted = new Map<string, number>();
    return markings.map((marking): MarkingDesign => {
      const number = (counted.get(marking.kind) ?? 0) + 1;
      counted.set(marking.kind, number);
      return { ...marking, id: marking.id ?? `${marking.kind}-${number}` };
    });
  },
);
