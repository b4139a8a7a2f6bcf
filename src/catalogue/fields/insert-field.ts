// The fields of a heat-set insert; see insert.ts for what each means.

import { type Field, mapped } from "../../design/field.ts";
import { record, required } from "../../design/fields.ts";
import { someMillimetres } from "../../design/length-fields.ts";
import { oneOf } from "../../design/text-fields.ts";
import type { Insert } from "../insert.ts";
import { titleField } from "./basic-fields.ts";
import { figuresField } from "./figures-field.ts";

const some = someMillimetres("a length");

/** Reads everything but the insert's name, which is the key it stands under. */
export const insertField: Field<Omit<Insert, "id">> = mapped(
  record("an insert", {
    title: required(titleField, "what it is called in lists"),
    thread: required(
      oneOf("a metric thread", ["m2", "m2.5", "m3", "m4", "m5", "m6", "m8"]),
      "its thread",
    ),
    outside: required(some, "diameter over its knurl"),
    length: required(some, "its length"),
    pilot: required(some, "finished diameter of its hole"),
    boss: required(some, "least diameter of the boss round it"),
    figures: required(figuresField, "where the numbers come from"),
  }),
  ({ written: _written, ...fields }) => ({ kind: "insert", ...fields }),
);
