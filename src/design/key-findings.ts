// What is told of the keys of a record that are read together: one that is missing, several that say the same.

import { type CodeEntry, type Finding, finding } from "../diagnostics/finding.ts";
import { inWords } from "../diagnostics/nearest.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { about, type TextNode } from "./text-node.ts";
import { spanOf, type Written } from "./written.ts";

export const told = (code: CodeEntry, node: TextNode, said: string): Finding =>
  finding(code, { message: `${about(node)}${said}`, span: node.span });

export const missing = (node: TextNode, key: string, what: string): Finding =>
  told(MEANING_CODES.missingKey, node, `\`${key}\` is missing (${what})`);

export const bothSaid = (node: TextNode, keys: readonly string[], written: Written): Finding => ({
  ...told(
    MEANING_CODES.contradiction,
    node,
    `${inWords(keys, "and")} say the same thing twice; keep one of them`,
  ),
  span: spanOf(written, keys[0] ?? ""),
});

export const misplaced = (
  node: TextNode,
  written: Written,
  [key, owner]: readonly [string, string],
): Finding => ({
  ...told(MEANING_CODES.contradiction, node, `\`${key}\` belongs to ${owner}`),
  span: spanOf(written, key),
});
