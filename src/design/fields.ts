// Fields put together from fields: records of known keys, lists, maps of names, choices.
//
// To add a key to a record: add one line to its `keys`, with `required`, `optional` or `usual` and the field that reads
// the value, and take the value up where the record is built. Reading, the list of known keys in messages, and the JSON
// Schema follow from that line.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { type Field, type Reading, read, unread } from "./field.ts";
import type { JsonSchema } from "./json-schema.ts";
import { nearKeys } from "./near-keys.ts";
import { wrongShape } from "./scalar-field.ts";
import { replacement, type Source, shortened } from "./source.ts";
import { about, type MapEntry, type MapNode, type TextNode } from "./text-node.ts";
import type { Written } from "./written.ts";

/** One key of a record: how its value is read, and what holds where it is not written. */
export interface Key<Value> {
  readonly field: Field<Value>;
  readonly about: string;
  readonly need:
    | { readonly kind: "required" }
    | { readonly kind: "may-be-absent"; readonly absent: Value; readonly shown: string | null };
  /** What a value that can't be read does: spoils the record, or is left out like an absent one. */
  readonly spoils: boolean;
}

export const required = <Value>(field: Field<Value>, about: string): Key<Value> => ({
  field,
  about,
  need: { kind: "required" },
  spoils: true,
});

/** null where the key is not written. */
export const optional = <Value>(field: Field<Value>, about: string): Key<Value | null> => ({
  field,
  about,
  need: { kind: "may-be-absent", absent: null, shown: null },
  spoils: true,
});

/** The trade's usual value where the key is not written; `shown` says it to an editor. */
export const usual = <Value>(
  field: Field<Value>,
  {
    value,
    shown,
    about,
  }: { readonly value: NoInfer<Value>; readonly shown?: string; readonly about: string },
): Key<Value> => ({
  field,
  about,
  need: { kind: "may-be-absent", absent: value, shown: shown ?? shownDefault(value) },
  spoils: true,
});

/** The rest of the record stands although this value can't be read. */
export const dispensable = <Value>(key: Key<Value>): Key<Value> => ({ ...key, spoils: false });

/** The keys of a record, by name. */
export type Keys = Readonly<Record<string, Key<unknown>>>;

export type ValuesOf<Of extends Keys> = {
  readonly [Name in keyof Of]: Of[Name] extends Key<infer Value> ? Value : never;
};

/** What a record gives: a value for every key, and where each was written. */
export type RecordOf<Of extends Keys> = ValuesOf<Of> & { readonly written: Written };

/** A map with known keys. Unknown and repeated keys are faults and leave the rest standing. */
export const record = <const Of extends Keys>(what: string, keys: Of): Field<RecordOf<Of>> => ({
  what,
  schema: recordSchema(what, keys),
  read: (node, source) => {
    if (node.kind !== "map") {
      return unread(node, ...wrongShape(node, what));
    }
    const reading = recordReading<Of>(node, source, keys);
    return reading.kind === "read" ? { ...reading, value: reading.value.values } : reading;
  },
});

/** A record that says as well which of its keys could not be read and were left out. */
export const recordWithUnread = <const Of extends Keys>(
  what: string,
  keys: Of,
): Field<RecordOf<Of> & { readonly unread: readonly string[] }> => ({
  what,
  schema: recordSchema(what, keys),
  read: (node, source) => {
    if (node.kind !== "map") {
      return unread(node, ...wrongShape(node, what));
    }
    const reading = recordReading<Of>(node, source, keys);
    return reading.kind === "read"
      ? { ...reading, value: { ...reading.value.values, unread: reading.value.left } }
      : reading;
  },
});

export interface ListBounds {
  readonly least?: number;
  readonly most?: number;
  /** An item that can't be read is left out (its finding stays) instead of spoiling the list. */
  readonly leaveOut?: boolean;
}

export const list = <Item>(
  what: string,
  item: Field<Item>,
  { least = 0, most = 1000, leaveOut = false }: ListBounds = {},
): Field<readonly Item[]> => ({
  what,
  schema: {
    type: "array",
    items: item.schema,
    description: what,
    ...(least > 0 ? { minItems: least } : {}),
    maxItems: most,
  },
  read: (node, source) => {
    if (node.kind !== "list") {
      return unread(node, ...wrongShape(node, what));
    }
    const { length } = node.items;
    if (length < least || length > most) {
      const said = length < least ? `at least ${least}` : `at most ${most}`;
      return unread(node, countFinding(node, `has ${length} values; ${said} are needed`));
    }
    const readings = node.items.map((each) => item.read(each, source));
    return gathered(node, readings, leaveOut);
  },
});

/** A list, or a single value that stands for a list of one. */
export const oneOrMore = <Item>(what: string, item: Field<Item>): Field<readonly Item[]> => {
  const many = list(what, item, { least: 1 });
  return {
    what,
    schema: { anyOf: [item.schema, many.schema], description: what },
    read: (node, source) => {
      if (node.kind === "list") {
        return many.read(node, source);
      }
      const reading = item.read(node, source);
      return reading.kind === "read" ? { ...reading, value: [reading.value] } : reading;
    },
  };
};

/** A list of exactly as many values as names are given: `[600, 400]`. */
export const tuple = <Item, const Names extends readonly string[]>(
  what: string,
  item: Field<Item>,
  names: Names,
): Field<{ readonly [Index in keyof Names]: Item }> => ({
  what,
  schema: {
    type: "array",
    items: item.schema,
    minItems: names.length,
    maxItems: names.length,
    description: `${what}: ${names.join(", ")}`,
  },
  read: (node, source) => {
    if (node.kind !== "list") {
      return unread(node, ...wrongShape(node, `a list of ${names.length} (${names.join(", ")})`));
    }
    if (node.items.length !== names.length) {
      const needed = `${names.length} are needed: ${names.join(", ")}`;
      return unread(node, countFinding(node, `has ${node.items.length} values; ${needed}`));
    }
    const readings = node.items.map((each) => item.read(each, source));
    const reading = gathered(node, readings, false);
    return reading.kind === "read"
      ? { ...reading, value: reading.value as { readonly [Index in keyof Names]: Item } }
      : reading;
  },
});

const countFinding = (node: TextNode, said: string): Finding =>
  finding(MEANING_CODES.wrongCount, { message: `${about(node)}${said}`, span: node.span });

const gathered = <Item>(
  node: TextNode,
  readings: readonly Reading<Item>[],
  leaveOut: boolean,
): Reading<readonly Item[]> => {
  const findings = readings.flatMap((reading) => reading.findings);
  const values = readings.flatMap((reading) => (reading.kind === "read" ? [reading.value] : []));
  return values.length === readings.length || leaveOut
    ? read(values, node, findings)
    : unread(node, ...findings);
};

const recordSchema = (what: string, keys: Keys): JsonSchema => {
  const properties = Object.fromEntries(
    Object.entries(keys).map(([name, { field, about: words, need }]) => [
      name,
      {
        ...field.schema,
        description: words,
        ...(need.kind === "may-be-absent" && need.shown !== null ? { default: need.shown } : {}),
      },
    ]),
  );
  const needed = Object.keys(keys).filter((name) => keys[name]?.need.kind === "required");
  return {
    type: "object",
    description: what,
    properties,
    ...(needed.length > 0 ? { required: needed } : {}),
    additionalProperties: false,
  };
};

const shownDefault = (value: unknown): string | null =>
  typeof value === "string" || typeof value === "number" ? String(value) : null;

const recordReading = <Of extends Keys>(
  node: MapNode,
  source: Source,
  keys: Of,
): Reading<{ readonly values: RecordOf<Of>; readonly left: readonly string[] }> => {
  const { entries, findings } = knownEntries(node, source, keys);
  const values: Record<string, unknown> = {};
  const left: string[] = [];
  let isSpoilt = false;
  for (const [name, key] of Object.entries(keys)) {
    const entry = entries.get(name);
    const reading =
      entry === undefined ? absent(node, name, key) : key.field.read(entry.value, source);
    findings.push(...reading.findings);
    if (reading.kind === "read") {
      values[name] = reading.value;
    } else if (key.need.kind === "may-be-absent" && !key.spoils) {
      values[name] = key.need.absent;
      left.push(name);
    } else {
      isSpoilt = true;
    }
  }
  if (isSpoilt) {
    return unread(node, ...findings);
  }
  const written = writtenOf(node, entries);
  return read({ values: { ...values, written } as RecordOf<Of>, left }, node, findings);
};

const writtenOf = (node: MapNode, entries: ReadonlyMap<string, MapEntry>): Written => ({
  span: node.span,
  keys: Object.fromEntries([...entries].map(([name, entry]) => [name, entry.value.span])),
});

const absent = <Value>(node: MapNode, name: string, key: Key<Value>): Reading<Value> =>
  key.need.kind === "may-be-absent"
    ? read(key.need.absent, node)
    : unread(
        node,
        finding(MEANING_CODES.missingKey, {
          message: `${about(node)}\`${name}\` is missing (${key.about})`,
          span: node.span,
        }),
      );

interface KnownEntries {
  readonly entries: ReadonlyMap<string, MapEntry>;
  readonly findings: Finding[];
}

/** The first entry of each known key; a finding for every other entry. */
const knownEntries = (node: MapNode, source: Source, keys: Keys): KnownEntries => {
  const entries = new Map<string, MapEntry>();
  const unknown: MapEntry[] = [];
  const twice: Finding[] = [];
  for (const entry of node.entries) {
    const first = entries.get(entry.key);
    if (!Object.hasOwn(keys, entry.key)) {
      unknown.push(entry);
    } else if (first === undefined) {
      entries.set(entry.key, entry);
    } else {
      twice.push(duplicate(TEXT_CODES.duplicateKey, node, { first, again: entry }));
    }
  }
  const free = Object.keys(keys).filter((name) => !entries.has(name));
  const findings = firstFew(unknown, (entry) => unknownKey(node, entry, { source, free }));
  return { entries, findings: [...findings, ...firstFew(twice, (found) => found)] };
};

const firstFew = <Cause>(
  causes: readonly Cause[],
  told: (cause: Cause) => Finding,
): readonly Finding[] =>
  causes.slice(0, MOST_TOLD).map((cause, index) => ({
    ...told(cause),
    suppressed: index === MOST_TOLD - 1 ? causes.length - MOST_TOLD : 0,
  }));

/** A map with more unknown or repeated keys than this is another kind of thing; the rest are counted. */
const MOST_TOLD = 20;

const unknownKey = (
  node: MapNode,
  entry: MapEntry,
  { source, free }: { readonly source: Source; readonly free: readonly string[] },
): Finding => {
  const { meant, hint } = nearKeys(entry.key, free);
  return finding(MEANING_CODES.unknownKey, {
    message: `${about(node)}${shortened(entry.key)} is not a key that can stand here${hint}`,
    span: entry.keySpan,
    remedies: meant.slice(0, 1).map((name) => ({
      title: `write ${name}`,
      edits: [replacement(source, entry.keySpan, name)],
    })),
  });
};

export const duplicate = (
  code: Parameters<typeof finding>[0],
  node: MapNode,
  { first, again }: { readonly first: MapEntry; readonly again: MapEntry },
): Finding =>
  finding(code, {
    message: `${about(node)}${shortened(again.key)} is written twice; keep the one that is meant`,
    span: again.keySpan,
    related: [{ what: "the first is here", span: first.keySpan }],
  });
