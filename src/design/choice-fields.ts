// Fields for things that come in several kinds: by the key that is present, by a `type`, by a single key, by shape.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { inWords, nearestNames } from "../diagnostics/nearest.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Field, type Reading, unread } from "./field.ts";
import { wrongShape } from "./scalar-field.ts";
import { replacement, type Source, shortened } from "./source.ts";
import { about, type MapEntry, type MapNode, type TextNode } from "./text-node.ts";

type Kinds<Value> = Readonly<Record<string, Field<Value>>>;

/** The kind of thing is told by which of several keys is there: `sheet`, `print`, `air`. The field reads the whole map. */
export const byKey = <Value>(what: string, kinds: Kinds<Value>): Field<Value> => ({
  what,
  schema: { oneOf: Object.values(kinds).map((kind) => kind.schema), description: what },
  read: (node, source) => {
    if (node.kind !== "map") {
      return unread(node, ...wrongShape(node, what));
    }
    const present = [...new Set(node.entries.map((entry) => entry.key))].filter((key) =>
      Object.hasOwn(kinds, key),
    );
    const kind = present.length === 1 ? kinds[present[0] ?? ""] : undefined;
    return kind === undefined
      ? unread(node, undecided(node, present, Object.keys(kinds)))
      : kind.read(node, source);
  },
});

/** The kind of thing is told by the value of a key such as `type`. The field reads the whole map, that key included. */
export const byWord = <Value>(what: string, key: string, kinds: Kinds<Value>): Field<Value> => ({
  what,
  schema: { oneOf: Object.values(kinds).map((kind) => kind.schema), description: what },
  read: (node, source) => {
    if (node.kind !== "map") {
      return unread(node, ...wrongShape(node, what));
    }
    const entry = node.entries.find((candidate) => candidate.key === key);
    if (entry === undefined) {
      const message = `${about(node)}\`${key}\` is missing; it can be ${inWords(Object.keys(kinds))}`;
      return unread(node, finding(MEANING_CODES.missingKey, { message, span: node.span }));
    }
    return wordReading(node, source, { entry, kinds });
  },
});

/** A map with one single key that tells the kind, its value being the thing: `- border: { ... }`. */
export const wrapped = <Value>(what: string, kinds: Kinds<Value>): Field<Value> => ({
  what,
  schema: {
    description: what,
    oneOf: Object.entries(kinds).map(([key, kind]) => ({
      type: "object",
      properties: { [key]: kind.schema },
      required: [key],
      additionalProperties: false,
    })),
  },
  read: (node, source) => {
    if (node.kind !== "map") {
      return unread(node, ...wrongShape(node, what));
    }
    const [entry, further] = node.entries;
    const kind =
      entry !== undefined && Object.hasOwn(kinds, entry.key) ? kinds[entry.key] : undefined;
    return entry === undefined || kind === undefined || further !== undefined
      ? unread(
          node,
          undecided(
            node,
            node.entries.map((each) => each.key),
            Object.keys(kinds),
          ),
        )
      : kind.read(entry.value, source);
  },
});

/** One field for a single value and another for a map of keys: `legend: BRAKE` or `legend: { text: BRAKE }`. */
export const shortOrLong = <Value>(
  what: string,
  short: Field<Value>,
  long: Field<Value>,
): Field<Value> => ({
  what,
  schema: { anyOf: [short.schema, long.schema], description: what },
  read: (node, source) => (node.kind === "map" ? long : short).read(node, source),
});

const undecided = (
  node: MapNode,
  present: readonly string[],
  kinds: readonly string[],
): Finding => {
  const known = present.filter((key) => kinds.includes(key));
  const has =
    known.length > 1
      ? `has ${inWords(known, "and")}`
      : known.length === 1
        ? `has ${inWords(present.map(shortened), "and")} side by side`
        : "has none of its keys";
  return finding(MEANING_CODES.oneOfKeys, {
    message: `${about(node)}${has}; exactly one of ${inWords(kinds)} is needed`,
    span: node.span,
  });
};

const wordReading = <Value>(
  node: TextNode,
  source: Source,
  { entry, kinds }: { readonly entry: MapEntry; readonly kinds: Kinds<Value> },
): Reading<Value> => {
  const { value } = entry;
  if (value.kind !== "scalar") {
    return unread(node, ...wrongShape(value, `one of ${inWords(Object.keys(kinds))}`));
  }
  const kind = Object.hasOwn(kinds, value.text) ? kinds[value.text] : undefined;
  if (kind !== undefined) {
    return kind.read(node, source);
  }
  const nearest = nearestNames(value.text, Object.keys(kinds));
  return unread(
    node,
    finding(VALUE_CODES.unknownWord, {
      message: `${about(value)}${shortened(value.text)} is not known here; the nearest are ${inWords(nearest, "and")}`,
      span: value.span,
      remedies: nearest.slice(0, 1).map((word) => ({
        title: `write ${word}`,
        edits: [replacement(source, value.span, word)],
      })),
    }),
  );
};
