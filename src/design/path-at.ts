// The path to the value that stands in a span: from where a thing was written to where its keys can be changed. Paths
// outlive edits of other values, spans do not.

import type { Span } from "../diagnostics/finding.ts";
import type { Path } from "./edit.ts";
import { readText } from "./read-text.ts";
import type { Source } from "./source.ts";
import type { TextNode } from "./text-node.ts";

/** null where no value stands in just this span. */
export const pathAt = (from: Source, span: Span): Path | null => {
  if (span.file !== from.file) return null;
  const { root } = readText(from);
  return root === null ? null : pathBelow(root, span);
};

const pathBelow = (node: TextNode, span: Span): Path | null => {
  if (node.span.start === span.start && node.span.end === span.end) return [];
  for (const [step, child] of childrenOf(node)) {
    if (child.span.start > span.start || child.span.end < span.end) continue;
    const rest = pathBelow(child, span);
    if (rest !== null) return [step, ...rest];
  }
  return null;
};

const childrenOf = (node: TextNode): readonly (readonly [string, TextNode])[] => {
  switch (node.kind) {
    case "map":
      return node.entries.map(({ key, value }) => [key, value] as const);
    case "list":
      return node.items.map((item, index) => [`${index}`, item] as const);
    case "scalar":
    case "empty":
    case "unreadable":
      return [];
  }
};
