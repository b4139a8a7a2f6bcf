// A component or a pattern of components, and the parts that are fitted to it.

import type { Finding } from "../diagnostics/finding.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { type Field, type Reading, read, refined, unread } from "./field.ts";
import { dispensable, oneOrMore, optional, type RecordOf, record, usual } from "./fields.ts";
import { bothSaid, misplaced, missing, told } from "./key-findings.ts";
import { DIAL, LEGEND, LEGENDS, POSITIONS, SCALE } from "./legend-fields.ts";
import { someMillimetres } from "./length-fields.ts";
import { MEASURED } from "./measured-field.ts";
import { angle } from "./number-fields.ts";
import type {
  ComponentCommon,
  ComponentDesign,
  ComponentPattern,
  FittedDesign,
} from "./panel-design.ts";
import { PATTERN_KEYS, type PatternReading, patternKeysOf } from "./pattern-fields.ts";
import { place } from "./place-fields.ts";
import { LAMP_BOX, TRIM } from "./printed-fields.ts";
import { longText, name, oneOf, text, yesNo } from "./text-fields.ts";
import type { TextNode } from "./text-node.ts";
import { UNTURNED } from "./usual-values.ts";
import { spanOf } from "./written.ts";

const PART = name("the name of a part");

/** To add a key: a line here, its field in the design's types, and a line in `commonOf`. */
const COMPONENT_KEYS = {
  part: optional(PART, "The kind of thing, from the catalogue"),
  at: optional(place(), "Where it stands"),
  ...PATTERN_KEYS,
  legend: dispensable(optional(LEGEND, "What is read beside it")),
  legends: optional(LEGENDS, "Legends of a pattern's members, in reading order"),
  knob: optional(PART, "The knob on its shaft"),
  cap: optional(PART, "The cap on its button"),
  guard: optional(PART, "The guard over it"),
  bezel: optional(PART, "The bezel round it"),
  boot: optional(PART, "The sealing boot on it"),
  plug: optional(PART, "The plug in it, for its room"),
  clamps: usual(oneOrMore("the names of layers", name("the name of a layer")), {
    value: [],
    about:
      "The layers that its nut or flange holds together, front to back; the last rigid sheet where it is not said",
  }),
  turn: usual(angle("an angle"), { value: UNTURNED, about: "Turned counter-clockwise" }),
  group: optional(text("the name of a group", 60), "Things of one group stand together"),
  circuit: optional(name("the name of a circuit"), "Lamps that are switched or dimmed together"),
  fitted: usual(oneOf("now or later", ["now", "later"]), {
    value: "now",
    about: "later: its hole is cut and it is judged, and it is listed as later",
  }),
  important: usual(yesNo("yes or no"), {
    value: false,
    shown: "no",
    about: "Must be reached and read first",
  }),
  positions: dispensable(optional(POSITIONS, "Words at the positions of a switch")),
  scale: dispensable(optional(SCALE, "Ticks and figures round a knob or selector")),
  dial: dispensable(optional(DIAL, "The face behind a needle")),
  hole: optional(
    someMillimetres("a diameter"),
    "Diameter that its hole is cut at, whatever paint and fit would ask for",
  ),
  washer: optional(
    oneOf("a kind of washer", ["light-tight"]),
    "light-tight: a printed washer closes the hole round its nut",
  ),
  trim: optional(TRIM, "A printed ring in the fascia round a display"),
  "lamp-box": optional(LAMP_BOX, "A printed box of cells behind the windows of an annunciator"),
  measured: optional(MEASURED, "Sizes of the part as measured on the real thing"),
  note: dispensable(optional(longText("a note"), "For the build book")),
};

type Values = RecordOf<typeof COMPONENT_KEYS>;

/** A component without its name, which is the key it stands under. */
export type NamelessComponent = Omit<ComponentDesign, "id"> | Omit<ComponentPattern, "id">;

export const COMPONENT: Field<NamelessComponent> = refined(
  record("a component", COMPONENT_KEYS),
  (values, node): Reading<NamelessComponent> => {
    const patterns = patternKeysOf(values);
    const pattern = patterns[0];
    if (pattern === undefined) {
      return single(values, node);
    }
    return patterns.length > 1
      ? unread(
          node,
          bothSaid(
            node,
            patterns.map(({ key }) => key),
            values.written,
          ),
        )
      : several(values, node, pattern);
  },
);

const single = (values: Values, node: TextNode): Reading<NamelessComponent> => {
  const { part, at, legend, legends, written } = values;
  const findings = [
    part === null ? missing(node, "part", "the kind of thing, from the catalogue") : null,
    at === null ? missing(node, "at", "where it stands") : null,
    legends === null
      ? null
      : misplaced(node, values.written, ["legends", "a pattern; a component has a `legend`"]),
  ].filter((found) => found !== null);
  return part === null || at === null || findings.length > 0
    ? unread(node, ...findings)
    : read({ kind: "component", ...commonOf(values, part), at, legend, written }, node);
};

const several = (
  values: Values,
  node: TextNode,
  { key, reading }: PatternReading,
): Reading<NamelessComponent> => {
  const { written } = values;
  const part = reading.part ?? values.part;
  const at = reading.at ?? values.at;
  const legends = values.legends ?? Array.from({ length: reading.members }, () => null);
  const findings = [
    reading.part !== null && values.part !== null
      ? bothSaid(node, ["part", `${key}.part`], written)
      : null,
    reading.at !== null && values.at !== null
      ? bothSaid(node, ["at", `${key}'s place`], written)
      : null,
    part === null ? missing(node, "part", `the kind of thing that the ${key} is made of`) : null,
    at === null ? missing(node, "at", `where the ${key} stands`) : null,
    values.legend === null
      ? null
      : misplaced(node, values.written, [
          "legend",
          "a single component; a pattern has `legends`, one a member",
        ]),
    legends.length === reading.members ? null : legendCount(node, values, { key, reading }),
  ].filter((found) => found !== null);
  if (part === null || at === null || findings.length > 0) {
    return unread(node, ...findings);
  }
  const { pattern } = reading;
  return read({ kind: "pattern", ...commonOf(values, part), pattern, at, legends, written }, node);
};

const commonOf = (values: Values, part: string): ComponentCommon => ({
  part,
  fittedWith: fittedOf(values),
  clamps: values.clamps,
  turn: values.turn,
  group: values.group,
  circuit: values.circuit,
  fitted: values.fitted,
  important: values.important,
  positions: values.positions,
  scale: values.scale,
  dial: values.dial,
  holeAsCut: values.hole,
  lightTight: values.washer !== null,
  trim: values.trim,
  lampBox: values["lamp-box"],
  measured: values.measured,
  note: values.note,
});

const ROLES = ["knob", "cap", "guard", "bezel", "boot", "plug"] as const;

const fittedOf = (values: Values): readonly FittedDesign[] =>
  ROLES.flatMap((role) => {
    const part = values[role];
    return part === null ? [] : [{ role, part, span: spanOf(values.written, role) }];
  });

const legendCount = (
  node: TextNode,
  values: Values,
  { key, reading }: PatternReading,
): Finding => ({
  ...told(
    MEANING_CODES.wrongCount,
    node,
    `has ${values.legends?.length ?? 0} legends for a ${key} of ${reading.members}; write "" for a member without one`,
  ),
  span: spanOf(values.written, "legends"),
});
