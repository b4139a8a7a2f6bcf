// Sizes of a part as measured on the real thing: `measured: { hold.length: 9.2 mm, dated: 2026-10-02 }`.
// Each key is the path of a field in the part's record; `dated` says when.

import { finding } from "../diagnostics/finding.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { type Field, read, unread } from "./field.ts";
import { optional, record } from "./fields.ts";
import { millimetres } from "./length-fields.ts";
import { lookupOf, mapById, type NameRule } from "./map-fields.ts";
import type { MeasuredDesign } from "./panel-design.ts";
import { wrongShape } from "./scalar-field.ts";
import { date } from "./text-fields.ts";
import { about, type MapNode } from "./text-node.ts";

const PATH_RULE: NameRule = {
  pattern: /^[a-z][A-Za-z0-9]*(?:[.-][A-Za-z0-9]+)*$/,
  hint: () => "name a field of the part's record, like hold.length",
  isInstance: false,
};

const WHAT = "measured sizes";
const VALUES = mapById(WHAT, millimetres("a length"), PATH_RULE);
const DATED = record(WHAT, { dated: optional(date("a date"), "When they were measured") });

export const MEASURED: Field<MeasuredDesign> = {
  what: WHAT,
  schema: {
    ...VALUES.schema,
    properties: DATED.schema.properties ?? {},
  },
  read: (node, source) => {
    if (node.kind !== "map") {
      return unread(node, ...wrongShape(node, WHAT));
    }
    const dated = DATED.read(
      only(node, (key) => key === "dated"),
      source,
    );
    const values = VALUES.read(
      only(node, (key) => key !== "dated"),
      source,
    );
    const findings = [...dated.findings, ...values.findings];
    if (dated.kind === "unread" || values.kind === "unread") {
      return unread(node, ...findings);
    }
    const readable = values.value.flatMap((entry) => (entry.kind === "read" ? [entry] : []));
    if (readable.length < values.value.length) {
      return unread(node, ...findings);
    }
    const undated =
      dated.value.dated === null
        ? [
            finding(MEANING_CODES.undated, {
              message: `${about(node)}has no date; add dated: and the day it was measured`,
              span: node.span,
            }),
          ]
        : [];
    const keys = Object.fromEntries(node.entries.map(({ key, value }) => [key, value.span]));
    return read(
      {
        values: lookupOf(readable.map(({ id, value }) => [id, value] as const)),
        dated: dated.value.dated,
        written: { span: node.span, keys },
      },
      node,
      [...findings, ...undated],
    );
  },
};

const only = (node: MapNode, keeps: (key: string) => boolean): MapNode => ({
  ...node,
  entries: node.entries.filter(({ key }) => keeps(key)),
});
