// What is read on the face: legends, scales, dials, and the words at a switch's positions.

import { finding, type Span } from "../diagnostics/finding.ts";
import { shortOrLong } from "./choice-fields.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Field, mapped, type Reading, read, refined, unread } from "./field.ts";
import { list, oneOrMore, optional, record, required, usual } from "./fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import { lookupOf, mapById, type NameRule } from "./map-fields.ts";
import { angle, number } from "./number-fields.ts";
import type {
  DialDesign,
  LegendDesign,
  LegendSide,
  LetteringDesign,
  PositionsDesign,
  ScaleDesign,
  Side,
} from "./panel-design.ts";
import { name, oneOf, text } from "./text-fields.ts";
import { about, type TextNode } from "./text-node.ts";
import { FONT, LEGEND_GAP, UNTURNED } from "./usual-values.ts";
import { spanOf, type Written } from "./written.ts";

export const SIDE: Field<Side> = oneOf("a side", ["above", "below", "left", "right"]);

const LEGEND_SIDES: Field<LegendSide> = oneOf("a side", ["above", "below", "left", "right", "on"]);

/** One line, or a list with a line each: `[FIRE, ENGINE ROOM]`. */
export const WORDS: Field<string> = mapped(
  oneOrMore("the words, a line each", text("a text")),
  (lines) => lines.join("\n"),
);

/** The keys of a legend; a free marking has them beside its own. */
export const LEGEND_KEYS = {
  text: required(WORDS, "The words, as they will be read; a list has a line each"),
  height: optional(someMillimetres("a height"), "Cap height; the panel's where it is not said"),
  font: optional(name("the name of a font"), "The panel's where it is not said"),
  turn: usual(angle("an angle"), { value: UNTURNED, about: "Turned counter-clockwise" }),
  alert: usual(oneOf("a kind of alert", ["none", "advisory", "caution", "warning"]), {
    value: "none",
    about: "How urgent it is; decides its colour and least height",
  }),
};

/** `legend: BRAKE`, or `legend: { text: BRAKE, side: below }`. */
export const LEGEND: Field<LegendDesign> = shortOrLong(
  "a legend",
  mapped(WORDS, (words, node) => plainLegend(words, node)),
  record("a legend", {
    ...LEGEND_KEYS,
    side: optional(
      LEGEND_SIDES,
      "Where it stands beside its component; on a lamp window, else above it, where it is not said",
    ),
    gap: optional(
      noOrSomeMillimetres("a gap"),
      "From its component; the panel's where it is not said",
    ),
  }),
);

const plainLegend = (words: string, node: TextNode): LegendDesign => ({
  text: words,
  height: null,
  font: null,
  side: null,
  gap: null,
  turn: UNTURNED,
  alert: "none",
  written: { span: node.span, keys: { text: node.span } },
});

/** Legends of a pattern's members, in reading order; `""` leaves a member without one. */
export const LEGENDS: Field<readonly (LegendDesign | null)[]> = list(
  "a list of legends, one a member",
  {
    ...LEGEND,
    read: (node, source): Reading<LegendDesign | null> =>
      isEmptyText(node) ? read(null, node) : LEGEND.read(node, source),
  },
);

/** Words of one member of a pattern; none where it is left empty. */
export interface MemberText {
  readonly words: string;
  readonly span: Span;
}

/** Of a pattern of legends by themselves, as `LEGENDS` are of components. */
export const MEMBER_TEXTS: Field<readonly MemberText[]> = list("a list of words, one a member", {
  ...WORDS,
  read: (node, source): Reading<MemberText> => {
    if (isEmptyText(node)) return read({ words: "", span: node.span }, node);
    const words = WORDS.read(node, source);
    return words.kind === "read"
      ? { ...words, value: { words: words.value, span: node.span } }
      : words;
  },
});

const isEmptyText = (node: TextNode): boolean =>
  node.kind === "scalar" && node.text === "" && node.style === "quoted";

/** What a panel's legends have in common. `height` is null where the viewing distance decides. */
export const LETTERING: Field<Omit<LetteringDesign, "height"> & Pick<LegendDesign, "height">> =
  record("the panel's lettering", {
    font: usual(name("the name of a font"), { value: FONT, about: "The font of all legends" }),
    height: optional(
      someMillimetres("a height"),
      "Cap height; 20 arc minutes at the viewing distance where it is not said",
    ),
    gap: usual(noOrSomeMillimetres("a gap"), {
      value: LEGEND_GAP,
      about: "Between a legend and its component",
    }),
  });

const POSITION_RULE: NameRule = {
  pattern: /^[a-z0-9]+(?:-[a-z0-9]+)*$/,
  hint: () => "name a position like up, centre, down, left, right or 1",
  isInstance: false,
};

/** `positions: { up: HELD, down: FREE }`. */
export const POSITIONS: Field<PositionsDesign> = refined(
  mapById("words for the positions of a switch", text("a legend"), POSITION_RULE),
  (entries, node) => {
    const readable = entries.flatMap((entry) => (entry.kind === "read" ? [entry] : []));
    if (readable.length < entries.length) {
      return unread(node);
    }
    return read(
      {
        labels: lookupOf(readable.map(({ id, value }) => [id, value] as const)),
        written: {
          span: node.span,
          keys: Object.fromEntries(readable.map(({ id, span }) => [id, span])),
        },
      },
      node,
    );
  },
);

/** `scale: { from: 0, to: 10, major: 2 }`, or one with words at the stops: `scale: { labels: [OFF, LOW, HIGH] }`. */
export const SCALE: Field<ScaleDesign> = refined(
  record("a scale", {
    from: optional(number("a number"), "The figure at the first stop"),
    to: optional(number("a number"), "The figure at the last stop"),
    major: optional(number("a number", { above: 0 }), "From one figure to the next"),
    minor: optional(number("a number", { above: 0 }), "From one small mark to the next"),
    legend: optional(LEGEND, "What it measures"),
    labels: optional(
      list("a list of words", text("a word"), { least: 2, most: 60 }),
      "Words in place of figures, one a stop",
    ),
  }),
  (values, node) => {
    const { from, to, major, labels } = values;
    if (labels !== null && from === null && to === null && major === null) {
      return read({ ...values, from: 1, to: labels.length, major: 1 }, node);
    }
    if (from === null || to === null || major === null) {
      const missing = Object.entries({ from, to, major }).filter(([, value]) => value === null);
      return unread(
        node,
        missingFinding(
          node,
          missing.map(([key]) => key),
        ),
      );
    }
    return stepped({ ...values, from, to, major }, node);
  },
);

/** `dial: { sweep: 120 deg, from: 0, to: 80, major: 20, unit: kN }`. */
export const DIAL: Field<DialDesign> = refined(
  record("a dial", {
    sweep: required(
      angle("an angle", { above: 0, most: 360 }),
      "The angle that the needle passes over",
    ),
    from: required(number("a number"), "The figure at the first mark"),
    to: required(number("a number"), "The figure at the last mark"),
    major: required(number("a number", { above: 0 }), "From one figure to the next"),
    minor: optional(number("a number", { above: 0 }), "From one small mark to the next"),
    unit: optional(text("a unit", 20), "Written on the dial"),
    radius: optional(
      someMillimetres("a radius"),
      "Radius of the marks; the part's where it is not said",
    ),
  }),
  (values, node) => stepped(values, node),
);

interface Steps {
  readonly from: number;
  readonly to: number;
  readonly major: number;
  readonly minor: number | null;
  readonly written: Written;
}

const stepped = <Values extends Steps>(values: Values, node: TextNode): Reading<Values> => {
  const { from, to, major, minor, written } = values;
  const refuse = (key: string, said: string): Reading<never> =>
    unread(
      node,
      finding(VALUE_CODES.outOfRange, {
        message: `${about(node)}${said}`,
        span: spanOf(written, key),
      }),
    );
  if (from === to) {
    return refuse("to", `it begins and ends at ${from}`);
  }
  if (major > Math.abs(to - from)) {
    return refuse("major", `steps of ${major} are longer than the scale`);
  }
  if (minor !== null && minor > major) {
    return refuse("minor", `small steps of ${minor} are longer than the large ones of ${major}`);
  }
  return read(values, node);
};

const missingFinding = (node: TextNode, keys: readonly string[]): ReturnType<typeof finding> =>
  finding(MEANING_CODES.missingKey, {
    message: `${about(node)}${keys.join(" and ")} missing; a scale needs from, to and major, or labels`,
    span: node.span,
  });
