// Markings that belong to no single component: free legends, lines, arrows, borders, brackets, windows.

import { countWords } from "../diagnostics/count-words.ts";
import type { Span } from "../diagnostics/finding.ts";
import { madeOnceWith } from "../geometry/made-once.ts";
import { wrapped } from "./choice-fields.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { type Field, mapped, type Reading, read, readOnce, refined, unread } from "./field.ts";
import { list, optional, record, required, usual, type ValuesOf } from "./fields.ts";
import { bothSaid, misplaced, missing, told } from "./key-findings.ts";
import {
  LEGEND,
  LEGEND_KEYS,
  MEMBER_TEXTS,
  type MemberText,
  SIDE,
  WORDS,
} from "./legend-fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import type { LegendDesign, MarkingDesign } from "./panel-design.ts";
import { patternCount } from "./pattern-count.ts";
import { place } from "./place-fields.ts";
import {
  LINE_SET_OUT_KEYS,
  linePatternOf,
  SET_OUT_KEYS,
  type SetOut,
  setOutOf,
} from "./set-out-fields.ts";
import { name, oneOf, reference } from "./text-fields.ts";
import type { TextNode } from "./text-node.ts";
import { BORDER_CORNER, BORDER_GAP, LEGEND_SIDE, WINDOW_CORNER } from "./usual-values.ts";
import { spanOf, type Written } from "./written.ts";

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

const LEGEND_AT = "Where it stands";

const FREE_LEGEND: Field<ReadMarking> = refined(
  record("a legend by itself", {
    name: NAME,
    ...LEGEND_KEYS,
    text: optional(WORDS, LEGEND_KEYS.text.about),
    texts: optional(MEMBER_TEXTS, "The words of a pattern's members, in reading order"),
    at: optional(place(), LEGEND_AT),
    ...SET_OUT_KEYS,
    align: usual(oneOf("an alignment", ["left", "centre", "right"]), {
      value: "centre",
      about: "Which end of it stands there",
    }),
  }),
  (values, node) => {
    const setOut = setOutOf(values, node, LEGEND_AT);
    const legends = memberLegends(values, node, setOut);
    if (setOut.kind === "unread" || legends.kind === "unread")
      return unread(node, ...setOut.findings, ...legends.findings);
    const { name: id, align, written } = values;
    const { at, pattern } = setOut.value;
    return read({ kind: "legend", id, legends: legends.value, at, align, pattern, written }, node);
  },
);

type LegendValues = ValuesOf<typeof LEGEND_KEYS>;

/** One text for all members, or one for each. */
const memberLegends = (
  values: Omit<LegendValues, "text"> & {
    readonly text: string | null;
    readonly texts: readonly MemberText[] | null;
    readonly written: Written;
  },
  node: TextNode,
  setOut: Reading<SetOut>,
): Reading<readonly (LegendDesign | null)[]> => {
  const { text, texts, height, font, turn, alert, written } = values;
  const style: Omit<LegendDesign, "text" | "written"> = {
    ...{ height, font, turn, alert },
    ...{ side: LEGEND_SIDE, gap: null },
  };
  const member = (words: string, span: Span): LegendDesign => ({
    ...{ text: words, ...style },
    written: { ...written, keys: { ...written.keys, text: span } },
  });
  if (text !== null && texts !== null)
    return unread(node, bothSaid(node, ["text", "texts"], written));
  const members = setOut.kind === "read" ? setOut.value.members : null;
  if (text !== null) {
    const every: LegendDesign = { text, ...style, written };
    return read(
      Array.from({ length: members ?? 1 }, () => every),
      node,
    );
  }
  if (texts === null || texts.every(({ words }) => words === ""))
    return unread(node, missing(node, "text", LEGEND_KEYS.text.about));
  if (setOut.kind === "read" && setOut.value.pattern === null)
    return unread(
      node,
      misplaced(node, written, ["texts", "a row, column, grid or ring; one legend has a `text`"]),
    );
  return members === null || members === texts.length
    ? read(
        texts.map(({ words, span }) => (words === "" ? null : member(words, span))),
        node,
      )
    : unread(node, {
        ...told(
          MEANING_CODES.wrongCount,
          node,
          `has ${countWords(texts.length, "text")} for ${countWords(members, "member")}; write "" for a member without one`,
        ),
        span: spanOf(written, "texts"),
      });
};

const stroke = (kind: "line" | "arrow"): Field<ReadMarking> =>
  refined(
    record(kind === "line" ? "a line" : "an arrow", {
      name: NAME,
      from: required(place(), "Where it begins"),
      to: required(place(), kind === "line" ? "Where it ends" : "Where its head is"),
      ...LINE_SET_OUT_KEYS,
      width: WIDTH,
    }),
    (values, node) => {
      const { name: id, from, to, width, written } = values;
      const pattern = linePatternOf(values, node);
      return pattern.kind === "read"
        ? read({ kind, id, from, to, width, pattern: pattern.value, written }, node)
        : pattern;
    },
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

const WINDOW_AT = "Where its centre is";

const WINDOW: Field<ReadMarking> = refined(
  record("a window", {
    name: NAME,
    at: optional(place(), WINDOW_AT),
    ...SET_OUT_KEYS,
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
  (values, node) => {
    const { name: id, width, height, corner, layers, written } = values;
    const setOut = setOutOf(values, node, WINDOW_AT);
    if (setOut.kind === "unread") return setOut;
    const { at, pattern } = setOut.value;
    return read({ kind: "window", id, at, width, height, corner, layers, pattern, written }, node);
  },
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

const called = madeOnceWith(
  (marking: ReadMarking, { id }: { readonly id: string }): MarkingDesign => ({ ...marking, id }),
);

const MOST_MARKINGS = 2000;

/** Markings that can't be read are left out; their findings stay. */
export const MARKINGS: Field<readonly MarkingDesign[]> = refined(
  list("a list of markings", readOnce(wrapped("a marking", KINDS)), {
    most: MOST_MARKINGS,
    leaveOut: true,
  }),
  (markings, node) => {
    const members = markings.reduce((sum, marking) => sum + membersOf(marking), 0);
    if (members > MOST_MARKINGS)
      return unread(
        node,
        told(
          MEANING_CODES.wrongCount,
          node,
          `has ${members} markings, the members of rows and grids counted; at most ${MOST_MARKINGS} are needed`,
        ),
      );
    const counted = new Map<string, number>();
    return read(
      markings.map((marking): MarkingDesign => {
        const number = (counted.get(marking.kind) ?? 0) + 1;
        counted.set(marking.kind, number);
        return called(marking, { id: marking.id ?? `${marking.kind}-${number}` });
      }),
      node,
    );
  },
);

const membersOf = (marking: ReadMarking): number =>
  "pattern" in marking ? patternCount(marking.pattern) : 1;
