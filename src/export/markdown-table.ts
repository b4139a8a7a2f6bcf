// Tables in Markdown for papers that are read on a screen: takes a heading and rows of plain words, gives a table.
// Every cell is words and nothing else: whatever Markdown, HTML or a link finder would act on is escaped
// (CommonMark 0.31, section 2.4, and the tables and autolinks of GitHub Flavored Markdown 0.29).

import { plainText } from "./plain-text.ts";

export interface MarkdownColumn {
  readonly title: string;
  readonly align: "left" | "right";
}

const LONGEST_CELL = 2000;

export const markdownTable = (
  columns: readonly MarkdownColumn[],
  rows: readonly (readonly string[])[],
): string => {
  const heading = columns.map((column) => markdownText(column.title));
  const rule = columns.map((column) => (column.align === "right" ? "---:" : "---"));
  const cells = rows.map((row) => row.map(markdownText));
  return [heading, rule, ...cells].map((row) => `| ${row.join(" | ")} |\n`).join("");
};

/** Words for a line of Markdown, a table's cell or a heading alike. */
export const markdownText = (text: string): string =>
  plainText(text, LONGEST_CELL)
    .trim()
    .replaceAll("\\", "\\\\")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll(/[`*_[\]|~!$#@^{}]/g, "\\$&")
    // A bare address becomes a link by itself unless its punctuation is escaped.
    .replaceAll("://", "\\://")
    .replaceAll(/\b(www)\./gi, "$1\\.")
    .replaceAll(/\b(mailto|xmpp):/gi, "$1\\:")
    // At the head of a line these begin a list (CommonMark 0.31, section 5.2: a space or nothing follows), a rule or a heading's
    // underline; a number as -0.2 does not.
    .replace(/^[-+](?=\s|$)|^[-=](?=[-=\s]*$)/, "\\$&")
    .replace(/^(\d{1,9})([.)])(?=\s|$)/, "$1\\$2");
