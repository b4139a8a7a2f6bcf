// The JSON Schema of design files (draft 2020-12), made from the fields that read them: editors complete and explain by it.

import { FILE_KINDS } from "./file-keys.ts";
import type { JsonSchema } from "./json-schema.ts";
import { DESIGN_FIELDS } from "./read-design.ts";

/** One schema for all kinds of file; `kind` tells which applies. `parts` is the catalogue's own, where it is given. */
export const designSchema = (parts: JsonSchema | null = null): JsonSchema => ({
  $schema: "https://json-schema.org/draft/2020-12/schema",
  title: "A design file: panel, console, workshop or list of parts",
  type: "object",
  required: ["consolewright", "kind", "name"],
  oneOf: FILE_KINDS.flatMap((kind) => {
    const schema = DESIGN_FIELDS[kind]?.schema ?? parts;
    return schema === null ? [] : [ofKind(schema, kind)];
  }),
});

const ofKind = (schema: JsonSchema, kind: string): JsonSchema => ({
  ...schema,
  properties: { ...schema.properties, kind: { const: kind } },
});
