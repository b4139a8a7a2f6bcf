// Where a record's numbers come from: one source for all, exceptions by path, and what to measure first.

import { type Field, mapped, read } from "../../design/field.ts";
import { list, record, required, usual } from "../../design/fields.ts";
import { mapById, type NameRule } from "../../design/map-fields.ts";
import { scalarField } from "../../design/scalar-field.ts";
import { oneOf, text } from "../../design/text-fields.ts";
import type { Figures, SourceKind } from "../part.ts";

const sourceText = text("a source: document, table, edition, or the plain truth", 160);

const sourceKind: Field<SourceKind> = oneOf("what kind of source it is", [
  "datasheet",
  "standard",
  "practice",
  "memory",
  "measured",
]);

const PATH = /^[a-zA-Z0-9]+(?:[.-][a-zA-Z0-9]+)*$/;

const PATHS: NameRule = {
  pattern: PATH,
  hint: () => "a path to a field, like hold.length",
  isInstance: false,
};

const pathField: Field<string> = scalarField({
  what: "a path to a field",
  schema: { type: "string", pattern: PATH.source },
  parse: (node) => read(node.text, node),
});

const exception = record("another source", {
  source: required(sourceText, "where this field comes from"),
  kind: required(sourceKind, "what kind of source it is"),
});

export const figuresField: Field<Figures> = mapped(
  record("where the numbers come from", {
    source: required(sourceText, "where the numbers come from"),
    kind: required(sourceKind, "what kind of source it is"),
    except: usual(mapById("fields from elsewhere", exception, PATHS), {
      value: [],
      about: "fields that come from elsewhere, by path",
    }),
    "measure-first": usual(list("paths", pathField), {
      value: [],
      about: "fields that decide a fit and that nobody has measured",
    }),
  }),
  (value) => ({
    source: value.source,
    kind: value.kind,
    exceptions: Object.fromEntries(
      value.except.flatMap((entry) =>
        entry.kind === "read"
          ? [[entry.id, { source: entry.value.source, kind: entry.value.kind }] as const]
          : [],
      ),
    ),
    measureFirst: value["measure-first"],
  }),
);
