// A map whose keys belong to two records at once: a shape and where it stands, a shape and the body that it bounds.
// Each field reads its own keys; a key that neither knows is refused once, by the first.

import { type Field, type Reading, read, unread } from "../../design/field.ts";
import type { JsonSchema } from "../../design/json-schema.ts";
import type { Source } from "../../design/source.ts";
import type { MapNode, TextNode } from "../../design/text-node.ts";

/** `second` takes `keys` of the map, `first` all others. */
export const beside = <First, Second>(
  first: Field<First>,
  second: Field<Second>,
  keys: readonly string[],
): Field<{ readonly first: First; readonly second: Second }> => ({
  what: first.what,
  schema: joinedSchema(first.schema, second.schema),
  read: (node, source) =>
    node.kind === "map"
      ? bothReading({ node, source, keys }, first, second)
      : unread(node, ...first.read(node, source).findings),
});

interface Given {
  readonly node: MapNode;
  readonly source: Source;
  readonly keys: readonly string[];
}

const bothReading = <First, Second>(
  { node, source, keys }: Given,
  first: Field<First>,
  second: Field<Second>,
): Reading<{ readonly first: First; readonly second: Second }> => {
  const one = first.read(
    withKeys(node, (key) => !keys.includes(key)),
    source,
  );
  const other = second.read(
    withKeys(node, (key) => keys.includes(key)),
    source,
  );
  const findings = [...one.findings, ...other.findings];
  return one.kind === "read" && other.kind === "read"
    ? read({ first: one.value, second: other.value }, node, findings)
    : unread(node, ...findings);
};

const withKeys = (node: MapNode, isKept: (key: string) => boolean): TextNode => ({
  ...node,
  entries: node.entries.filter((entry) => isKept(entry.key)),
});

/** Every kind of the first with the keys of the second. */
const joinedSchema = (first: JsonSchema, second: JsonSchema): JsonSchema => ({
  ...first,
  ...(first.properties === undefined ? {} : joinedObject(first, second)),
  ...(first.oneOf === undefined
    ? {}
    : { oneOf: first.oneOf.map((kind) => joinedSchema(kind, second)) }),
});

const joinedObject = (first: JsonSchema, second: JsonSchema): JsonSchema => ({
  properties: { ...first.properties, ...second.properties },
  required: [...(first.required ?? []), ...(second.required ?? [])],
});
