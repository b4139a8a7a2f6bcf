// Small fields that records share: points, pairs, "none", ids of other records, words of a thread.

import { type Field, mapped, read } from "../../design/field.ts";
import { list, tuple } from "../../design/fields.ts";
import { millimetres, someMillimetres } from "../../design/length-fields.ts";
import { name, text } from "../../design/text-fields.ts";
import { type Point, point } from "../../geometry/contour.ts";
import type { Mm } from "../../geometry/quantity.ts";
import type { Grip } from "../part.ts";

/** `[x, y]`, from the axis of the part. */
export const pointField: Field<Point> = mapped(
  tuple("a place", millimetres("a distance from the axis"), ["x", "y"]),
  ([x, y]) => point(x, y),
);

/** `[width, height]`. */
export const sizePair: Field<readonly [Mm, Mm]> = tuple("a size", someMillimetres("a length"), [
  "width",
  "height",
]);

/** `[least, most]`. */
export const gripField: Field<Grip> = mapped(
  tuple("a range of thickness", someMillimetres("a thickness"), ["least", "most"]),
  ([least, most]) => ({ least, most }),
);

/** The field's value, or null where the word `none` stands. */
export const orNone = <Value>(field: Field<Value>): Field<Value | null> => ({
  what: `${field.what} or none`,
  schema: { anyOf: [field.schema, { const: "none" }], description: field.what },
  read: (node, source) =>
    node.kind === "scalar" && node.text === "none" ? read(null, node) : field.read(node, source),
});

export const idField: Field<string> = name("the name of a record");

export const idsField: Field<readonly string[]> = list("names of records", idField);

/** `1/4-40`, `M7x0.75`, `m3`: written as on its drawing; records of one thread write it alike. */
export const threadField: Field<string> = text("a thread", 20);

export const titleField: Field<string> = text("what it is called in lists", 120);
