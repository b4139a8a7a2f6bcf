// Where a thing stands: one statement across and one up, each an intent rather than a coordinate.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { inWords } from "../diagnostics/nearest.ts";
import { mm } from "../geometry/quantity.ts";
import { shortOrLong } from "./choice-fields.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Field, mapped, type Reading, read, refined, unread } from "./field.ts";
import { optional, type RecordOf, record } from "./fields.ts";
import { length, lengthReading, noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import type { AxisPlace, PlaceDesign } from "./panel-design.ts";
import { pairInNode } from "./place-pair.ts";
import { scalarField } from "./scalar-field.ts";
import { replacement, type Source } from "./source.ts";
import { oneOf, reference } from "./text-fields.ts";
import { about, type TextNode } from "./text-node.ts";
import type { Written } from "./written.ts";

/** `x: 24 mm`, or `x: centre`, `x: left`. */
const coordinate = <Word extends "left" | "right" | "bottom" | "top">(
  key: "x" | "y",
  words: { readonly low: Word; readonly high: Word },
): Field<AxisPlace> =>
  scalarField<AxisPlace>({
    what: `a length, centre, ${words.low} or ${words.high}`,
    schema: { anyOf: [{ enum: ["centre", words.low, words.high] }, length("").schema] },
    parse: (node, source) => {
      switch (node.text) {
        case "centre":
          return read<AxisPlace>({ kind: "centre", key }, node);
        case words.low:
          return read<AxisPlace>({ kind: "low-edge", key }, node);
        case words.high:
          return read<AxisPlace>({ kind: "high-edge", key }, node);
        default: {
          const rules = { bounds: {}, code: VALUE_CODES.notAPlace };
          const reading = lengthReading(node, source, rules);
          return reading.kind === "read"
            ? { ...reading, value: { kind: "from-low", distance: reading.value.mm, key } }
            : reading;
        }
      }
    },
  });

/** The keys of a place; a row or a ring has them beside its own. */
export const PLACE_KEYS = {
  x: optional(
    coordinate("x", { low: "left", high: "right" }),
    "From the left edge to its centre; or centre, left, right",
  ),
  y: optional(
    coordinate("y", { low: "bottom", high: "top" }),
    "From the lower edge to its centre; or centre, bottom, top",
  ),
  left: optional(noOrSomeMillimetres("a distance"), "From the left edge to its centre"),
  right: optional(noOrSomeMillimetres("a distance"), "From the right edge to its centre"),
  bottom: optional(noOrSomeMillimetres("a distance"), "From the lower edge to its centre"),
  top: optional(noOrSomeMillimetres("a distance"), "From the upper edge to its centre"),
  "right-of": optional(
    reference("the name of a component"),
    "The neighbour it stands to the right of, with centres or gap",
  ),
  "left-of": optional(
    reference("the name of a component"),
    "The neighbour it stands to the left of, with centres or gap",
  ),
  above: optional(
    reference("the name of a component"),
    "The neighbour it stands above, with centres or gap",
  ),
  below: optional(
    reference("the name of a component"),
    "The neighbour it stands below, with centres or gap",
  ),
  "level-with": optional(
    reference("the name of a component"),
    "The neighbour whose height it shares",
  ),
  "in-line-with": optional(
    reference("the name of a component"),
    "The neighbour above or below which it stands in line",
  ),
  centres: optional(someMillimetres("a distance"), "To the neighbour, from centre to centre"),
  gap: optional(noOrSomeMillimetres("a distance"), "To the neighbour, from edge to edge"),
  residual: optional(
    noOrSomeMillimetres("a length"),
    "How far off it may be, where it was read from a photograph",
  ),
};

export type PlaceValues = RecordOf<typeof PLACE_KEYS>;

/** `at: { left: 24 mm, top: 30 mm }`, or `at: centre`. */
export const place = (): Field<PlaceDesign> => PLACE;

/** A place that takes only what the keys say; for records that have the keys beside their own. */
export const placeOf = (values: PlaceValues, node: TextNode): Reading<PlaceDesign> => {
  const across = axisOf(values, ACROSS);
  const along = axisOf(values, ALONG);
  const findings = placeFindings(node, { values, across, along });
  const [x, y] = [across[0]?.place, along[0]?.place];
  const placeAcross = x ?? inLineWith(y);
  const placeAlong = y ?? inLineWith(x);
  if (findings.length > 0 || placeAcross === null || placeAlong === null) {
    return unread(node, ...findings);
  }
  const { written, residual } = values;
  return read({ across: placeAcross, along: placeAlong, residual, written }, node);
};

export const hasPlace = (values: Omit<PlaceValues, "written">): boolean =>
  [...ACROSS.keys, ...ALONG.keys, ...MEASURES].some((key) => values[key] !== null);

interface Statement {
  readonly key: string;
  readonly place: AxisPlace;
}

type PlaceKey = Exclude<keyof typeof PLACE_KEYS, "residual">;

interface Axis {
  readonly keys: readonly PlaceKey[];
  readonly statement: (key: PlaceKey, values: PlaceValues) => AxisPlace | null;
}

const ACROSS: Axis = {
  keys: ["x", "left", "right", "right-of", "left-of", "in-line-with"],
  statement: (key, values) => {
    switch (key) {
      case "x":
        return values.x;
      case "left":
        return fromLow("left", values.left);
      case "right":
        return fromHigh("right", values.right);
      case "right-of":
        return beside("right-of", "high", values);
      case "left-of":
        return beside("left-of", "low", values);
      default:
        return values["in-line-with"] === null
          ? null
          : { kind: "in-line", neighbour: values["in-line-with"] };
    }
  },
};

const ALONG: Axis = {
  keys: ["y", "bottom", "top", "above", "below", "level-with"],
  statement: (key, values) => {
    switch (key) {
      case "y":
        return values.y;
      case "bottom":
        return fromLow("bottom", values.bottom);
      case "top":
        return fromHigh("top", values.top);
      case "above":
        return beside("above", "high", values);
      case "below":
        return beside("below", "low", values);
      default:
        return values["level-with"] === null
          ? null
          : { kind: "in-line", neighbour: values["level-with"] };
    }
  },
};

const MEASURES = ["centres", "gap"] as const;

const axisOf = (values: PlaceValues, axis: Axis): readonly Statement[] =>
  axis.keys.flatMap((key) => {
    const statement = values[key] === null ? null : axis.statement(key, values);
    return statement === null ? [] : [{ key, place: statement }];
  });

const fromLow = (key: "left" | "bottom", distance: PlaceValues["left"]): AxisPlace | null =>
  distance === null ? null : { kind: "from-low", distance, key };

const fromHigh = (key: "right" | "top", distance: PlaceValues["left"]): AxisPlace | null =>
  distance === null ? null : { kind: "from-high", distance, key };

type BesideKey = "right-of" | "left-of" | "above" | "below";

/** A neighbour without a distance still counts as a statement; the missing distance is told by itself. */
const beside = (key: BesideKey, toward: "high" | "low", values: PlaceValues): AxisPlace | null => {
  const neighbour = values[key];
  if (neighbour === null) {
    return null;
  }
  const measure = values.centres === null ? "gap" : "centres";
  const distance = values.centres ?? values.gap ?? NO_DISTANCE;
  return { kind: "beside", neighbour, toward, measure, distance, key };
};

/** An axis that is not said beside a neighbour keeps the neighbour's line. */
const inLineWith = (other: AxisPlace | undefined): AxisPlace | null =>
  other?.kind === "beside" ? { kind: "in-line", neighbour: other.neighbour } : null;

interface PlaceFacts {
  readonly values: PlaceValues;
  readonly across: readonly Statement[];
  readonly along: readonly Statement[];
}

const placeFindings = (node: TextNode, facts: PlaceFacts): readonly Finding[] =>
  [
    contradiction(node, facts.across, { direction: "across", written: facts.values.written }),
    contradiction(node, facts.along, { direction: "up", written: facts.values.written }),
    incomplete(node, facts),
    measureFinding(node, facts),
  ].filter((found) => found !== null);

const contradiction = (
  node: TextNode,
  statements: readonly Statement[],
  { direction, written }: { readonly direction: string; readonly written: Written },
): Finding | null => {
  if (statements.length < 2) {
    return null;
  }
  const keys = statements.map(({ key }) => key);
  const spans = keys.map((key) => written.keys[key] ?? node.span);
  return finding(MEANING_CODES.contradiction, {
    message: `${about(node)}${inWords(keys, "and")} all say where it stands ${direction}; keep one of them`,
    span: spans[1] ?? node.span,
    related: [{ what: `${keys[0]} is here`, span: spans[0] ?? node.span }],
  });
};

const incomplete = (node: TextNode, { across, along }: PlaceFacts): Finding | null => {
  const isBeside = [...across, ...along].some(({ place: said }) => said.kind === "beside");
  if ((across.length > 0 && along.length > 0) || isBeside) {
    return null;
  }
  const missing = [
    ...(across.length > 0 ? [] : ["across (such as x, left or right)"]),
    ...(along.length > 0 ? [] : ["up (such as y, bottom or top)"]),
  ];
  return finding(MEANING_CODES.placeIncomplete, {
    message: `${about(node)}does not say where it stands ${missing.join(" and ")}`,
    span: node.span,
  });
};

const measureFinding = (node: TextNode, { values, across, along }: PlaceFacts): Finding | null => {
  const neighbour = [...across, ...along].find(({ place: said }) => said.kind === "beside");
  const measures = MEASURES.filter((key) => values[key] !== null);
  const refuse = (code: Parameters<typeof finding>[0], said: string, key: string): Finding =>
    finding(code, {
      message: `${about(node)}${said}`,
      span: values.written.keys[key] ?? node.span,
    });
  if (measures.length > 1) {
    const said = "centres and gap both say how far it is from its neighbour; keep one of them";
    return refuse(MEANING_CODES.contradiction, said, "gap");
  }
  const measure = measures[0];
  if (neighbour === undefined) {
    const said = `${measure} needs a neighbour: right-of, left-of, above or below`;
    return measure === undefined ? null : refuse(MEANING_CODES.missingKey, said, measure);
  }
  const said = `${neighbour.key} needs a distance: centres (centre to centre) or gap (edge to edge)`;
  return measure === undefined ? refuse(MEANING_CODES.missingKey, said, neighbour.key) : null;
};

const NO_DISTANCE = mm(0);

const CENTRE: Field<PlaceDesign> = mapped(
  oneOf("centre, or a place like { left: 24 mm, top: 30 mm }", ["centre"]),
  (_word, node) => ({
    across: { kind: "centre", key: "at" },
    along: { kind: "centre", key: "at" },
    residual: null,
    written: { span: node.span, keys: {} },
  }),
);

/** Of two numbers alone nothing says which is which; most who write them mean x and y. */
const pairRefused = (node: TextNode, source: Source): Reading<never> | null => {
  const meant = pairInNode(node);
  if (meant === null) return null;
  const title = `write ${meant}`;
  return unread(
    node,
    finding(VALUE_CODES.wrongShape, {
      message: `${about(node)}is two numbers; a place says which is which: ${title}`,
      span: node.span,
      remedies: [{ title, edits: [replacement(source, node.span, meant)] }],
    }),
  );
};

const IN_KEYS: Field<PlaceDesign> = shortOrLong(
  "a place",
  CENTRE,
  refined(record("a place", PLACE_KEYS), placeOf),
);

const PLACE: Field<PlaceDesign> = {
  ...IN_KEYS,
  read: (node, source) => pairRefused(node, source) ?? IN_KEYS.read(node, source),
};
