// The root of every field that reads a single value: it sees to it that there is one value, and hands on its text.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Field, type Reading, unread } from "./field.ts";
import type { JsonSchema } from "./json-schema.ts";
import type { Source } from "./source.ts";
import { about, type ScalarNode, type TextNode } from "./text-node.ts";

export interface ScalarFieldParts<Value> {
  readonly what: string;
  readonly schema: JsonSchema;
  readonly parse: (node: ScalarNode, source: Source) => Reading<Value>;
}

export const scalarField = <Value>({
  what,
  schema,
  parse,
}: ScalarFieldParts<Value>): Field<Value> => ({
  what,
  schema,
  read: (node, source) =>
    node.kind === "scalar" ? parse(node, source) : unread(node, ...wrongShape(node, what)),
});

/** What is said of a node that has another shape than its field needs; nothing where the tree has spoken already. */
export const wrongShape = (node: TextNode, what: string): readonly Finding[] => {
  switch (node.kind) {
    case "unreadable":
      return [];
    case "empty":
      return [
        finding(TEXT_CODES.keyWithoutValue, {
          message: `${about(node)}has no value${node.eaten === null ? "" : ", because a # begins a comment"}; ${what} belongs here`,
          span: node.span,
        }),
      ];
    case "scalar":
    case "map":
    case "list":
      return [
        finding(VALUE_CODES.wrongShape, {
          message: `${about(node)}is ${SHAPES[node.kind]}; ${what} belongs here`,
          span: node.span,
        }),
      ];
  }
};

const SHAPES = {
  scalar: "a single value",
  map: "a group of keys",
  list: "a list",
} as const;
