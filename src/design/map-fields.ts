// Fields for maps whose keys are names of the user's own: components, bays, stock.

import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Field, mapped, type Reading, read, unread } from "./field.ts";
import { duplicate } from "./fields.ts";
import { wrongShape } from "./scalar-field.ts";
import { type Source, shortened } from "./source.ts";
import { LONGEST_NAME, NAME, nameHint } from "./text-fields.ts";
import { about, type MapEntry, type MapNode, type TextNode } from "./text-node.ts";

/** One entry of a map of names; what can't be read keeps its name and place. */
export type NamedEntry<Value> =
  | {
      readonly kind: "read";
      readonly id: string;
      readonly value: Value;
      readonly keySpan: Span;
      readonly span: Span;
    }
  | {
      readonly kind: "unreadable";
      readonly id: string;
      readonly keySpan: Span;
      readonly span: Span;
    };

export interface NameRule {
  readonly pattern: RegExp;
  readonly hint: (written: string) => string;
  /** The names are instances of the panel, so that findings below them carry the name. */
  readonly isInstance: boolean;
}

export const NAME_RULE: NameRule = { pattern: NAME, hint: nameHint, isInstance: false };

/** Entries in the order of the text. */
export const mapById = <Value>(
  what: string,
  item: Field<Value>,
  rule: NameRule = NAME_RULE,
): Field<readonly NamedEntry<Value>[]> => ({
  what,
  schema: {
    type: "object",
    description: what,
    propertyNames: { pattern: rule.pattern.source },
    additionalProperties: item.schema,
  },
  read: (node, source) =>
    node.kind === "map"
      ? entriesReading(node, source, { item, rule })
      : unread(node, ...wrongShape(node, what)),
});

/**
 * A map of names to values of one kind; `build` makes an entry's value and may take up its name.
 * Entries that can't be read are left out; their findings stay.
 */
export const lookup = <Value, Built>(
  what: string,
  item: Field<Value>,
  build: (value: Value, id: string) => Built,
): Field<Readonly<Record<string, Built>>> =>
  mapped(mapById(what, item), (entries) =>
    lookupOf(
      entries.flatMap((entry) =>
        entry.kind === "read" ? [[entry.id, build(entry.value, entry.id)] as const] : [],
      ),
    ),
  );

/** A record without a prototype: a name like `constructor` finds nothing that was not put in. */
export const lookupOf = <Value>(
  entries: readonly (readonly [string, Value])[],
): Readonly<Record<string, Value>> =>
  Object.assign(Object.create(null), Object.fromEntries(entries)) as Record<string, Value>;

const entriesReading = <Value>(
  node: MapNode,
  source: Source,
  { item, rule }: { readonly item: Field<Value>; readonly rule: NameRule },
): Reading<readonly NamedEntry<Value>[]> => {
  const seen = new Map<string, MapEntry>();
  const entries: NamedEntry<Value>[] = [];
  const findings: Finding[] = [];
  for (const entry of node.entries) {
    const first = seen.get(entry.key);
    if (first !== undefined) {
      const again = duplicate(TEXT_CODES.duplicateId, node, { first, again: entry });
      findings.push(rule.isInstance ? ofInstance(again, entry.key) : again);
      continue;
    }
    seen.set(entry.key, entry);
    const reading = namedReading(node, source, { entry, item, rule });
    findings.push(...reading.findings);
    const { key: id, keySpan } = entry;
    const { span } = entry.value;
    entries.push(
      reading.kind === "read"
        ? { kind: "read", id, value: reading.value, keySpan, span }
        : { kind: "unreadable", id, keySpan, span },
    );
  }
  return read(entries, node, findings);
};

const namedReading = <Value>(
  node: TextNode,
  source: Source,
  {
    entry,
    item,
    rule,
  }: {
    readonly entry: MapEntry;
    readonly item: Field<Value>;
    readonly rule: NameRule;
  },
): Reading<Value> => {
  const { key, keySpan, value } = entry;
  if (key.length > LONGEST_NAME || !rule.pattern.test(key)) {
    return unread(
      value,
      finding(VALUE_CODES.notAName, {
        message: `${about(node)}${shortened(key)} is not a name; ${rule.hint(key)}`,
        span: keySpan,
      }),
    );
  }
  const reading = item.read(value, source);
  return {
    ...reading,
    findings: rule.isInstance
      ? reading.findings.map((found) => ofInstance(found, key))
      : reading.findings,
  };
};

const ofInstance = (found: Finding, id: string): Finding =>
  found.subjects.length === 0 ? { ...found, subjects: [id] } : found;
