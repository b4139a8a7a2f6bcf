// A field is how one value of a design is read: it takes a node of the text and gives the value or findings,
// and it carries the JSON Schema that says the same to an editor. Fields are put together from fields.

import type { Finding, Span } from "../diagnostics/finding.ts";
import type { JsonSchema } from "./json-schema.ts";
import { fromSameWords } from "./moved-words.ts";
import type { Source } from "./source.ts";
import type { TextNode } from "./text-node.ts";

export interface Field<Value> {
  readonly read: (node: TextNode, source: Source) => Reading<Value>;
  readonly schema: JsonSchema;
  /** What belongs here, for messages: "a length, like `12.5 mm`". */
  readonly what: string;
}

/** A value may come with findings (a key too many); without a value there is always one, here or in the tree. */
export type Reading<Value> =
  | {
      readonly kind: "read";
      readonly value: Value;
      readonly span: Span;
      readonly findings: readonly Finding[];
    }
  | { readonly kind: "unread"; readonly span: Span; readonly findings: readonly Finding[] };

const NONE: readonly Finding[] = [];

export const read = <Value>(
  value: Value,
  node: { readonly span: Span },
  findings: readonly Finding[] = NONE,
): Reading<Value> => ({ kind: "read", value, span: node.span, findings });

export const unread = (
  node: { readonly span: Span },
  ...findings: readonly Finding[]
): Reading<never> => ({ kind: "unread", span: node.span, findings });

/** The same field with its value turned into another. */
export const mapped = <Value, Other>(
  field: Field<Value>,
  turn: (value: Value, node: TextNode) => Other,
): Field<Other> => ({
  ...field,
  read: (node, source) => {
    const reading = field.read(node, source);
    return reading.kind === "read" ? { ...reading, value: turn(reading.value, node) } : reading;
  },
});

/** The same field with a further judgement: `judge` gives the value that counts, or a finding. */
export const refined = <Value, Other>(
  field: Field<Value>,
  judge: (value: Value, node: TextNode, source: Source) => Reading<Other>,
): Field<Other> => ({
  ...field,
  read: (node, source) => {
    const reading = field.read(node, source);
    if (reading.kind === "unread") {
      return reading;
    }
    const judged = judge(reading.value, node, source);
    return reading.findings.length === 0
      ? judged
      : { ...judged, findings: [...reading.findings, ...judged.findings] };
  },
});

/**
 * The same field, asked once a node: what an edit has left where it stood is the node that it was (`reread-line.ts`) and is not
 * read again. Sound readings alone are kept: they owe nothing to the rest of the text, while a finding's edits carry its hash.
 */
export const readOnce = <Value>(field: Field<Value>): Field<Value> => {
  const known = new WeakMap<TextNode, Reading<Value>>();
  return {
    ...field,
    read: (node, source) => {
      const before = known.get(node);
      if (before !== undefined) return before;
      const reading = field.read(node, source);
      if (reading.findings.length > 0 || reading.kind === "unread") return reading;
      known.set(node, reading);
      if (typeof reading.value === "object" && reading.value !== null)
        fromSameWords(reading.value, node);
      return reading;
    },
  };
};
