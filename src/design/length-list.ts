// A list of lengths of no fixed number. `[3,5 mm]` may be two lengths or one with a decimal comma: that is asked.

import { type Finding, finding } from "../diagnostics/finding.ts";
import type { Mm } from "../geometry/quantity.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Field, read, refined } from "./field.ts";
import { list } from "./fields.ts";
import { someMillimetres } from "./length-fields.ts";
import { quotedFrom, type Source, spanIn } from "./source.ts";
import { about, type TextNode } from "./text-node.ts";

export const lengthList = (what: string): Field<readonly Mm[]> =>
  refined(
    list(what, someMillimetres("a length"), { least: 1, most: 200 }),
    (values, node, source) =>
      read(values, node, node.kind === "list" ? doubtfulCommas(node.items, source) : []),
  );

const doubtfulCommas = (items: readonly TextNode[], source: Source): readonly Finding[] =>
  items.flatMap((item, index) => {
    const next = items[index + 1];
    if (next === undefined) {
      return [];
    }
    const span = spanIn(source, item.span.start, next.span.end);
    const written = source.text.slice(span.start, span.end);
    return /^\d+,\d/.test(written)
      ? [
          finding(VALUE_CODES.listOrDecimalComma, {
            message: `${about(item)}${quotedFrom(source, span)} is read as two lengths; put a space after the comma, or write a point if it is one`,
            span,
          }),
        ]
      : [];
  });
