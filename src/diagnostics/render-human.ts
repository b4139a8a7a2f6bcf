// Findings for a person: what is wrong, the lines it stands on with the place marked, who set the limit,
// and what would clear it. Plain text without colour: the words carry the meaning.

import type { Finding, Span } from "./finding.ts";
import { limitInWords } from "./limit-in-words.ts";
import { lineAndColumn, lineText } from "./position.ts";
import { printable } from "./printable.ts";

/** `files` holds the text of each file that a finding points into; a file that is not there gives no frame. */
export const renderHuman = (
  findings: readonly Finding[],
  files: ReadonlyMap<string, string>,
): string => findings.map((found) => `${rendered(found, files)}\n`).join("\n");

const rendered = (found: Finding, files: ReadonlyMap<string, string>): string => {
  const lines = [`${found.severity}: ${found.message}  [${found.code}]`].map(printable);
  lines.push(...frame(found.span, files));
  for (const { what, span } of found.related) {
    lines.push(printable(`  ${what}`), ...frame(span, files));
  }
  if (found.source !== null) {
    lines.push(printable(`  limit: ${limitInWords(found.source)}`));
  }
  for (const { title, edits } of found.remedies) {
    lines.push(printable(`  remedy: ${title}${edits.length > 0 ? " (can be applied)" : ""}`));
  }
  if (found.suppressed > 0) {
    lines.push(`  ${found.suppressed} more with the same cause`);
  }
  return lines.join("\n");
};

/** Longer lines are shown around the place. */
const FRAME_WIDTH = 100;

const frame = (span: Span, files: ReadonlyMap<string, string>): readonly string[] => {
  const text = files.get(span.file);
  if (text === undefined) {
    return [printable(`  --> ${span.file}`)];
  }
  const { line, column } = lineAndColumn(text, span.start);
  const whole = [...lineText(text, line)];
  const first = Math.max(0, Math.min(column - 1 - FRAME_WIDTH / 2, whole.length - FRAME_WIDTH));
  const shown = whole.slice(first, first + FRAME_WIDTH).map(oneColumn);
  const marked = Math.max(
    1,
    Math.min(charactersOf(text, span), shown.length - (column - 1 - first)),
  );
  const margin = " ".repeat(String(line).length);
  return [
    printable(`  --> ${span.file}:${line}:${column}`),
    `  ${margin} |`,
    `  ${line} | ${shown.join("")}`,
    `  ${margin} | ${" ".repeat(column - 1 - first)}${"^".repeat(marked)}`,
  ];
};

/** Tabs and unsafe characters take one column in the frame, so that the mark stands under its place. */
const oneColumn = (character: string): string =>
  printable(character) === character ? character : " ";

const charactersOf = (text: string, span: Span): number => {
  const stretch = text.slice(span.start, span.end);
  const lineEnd = stretch.indexOf("\n");
  return [...(lineEnd === -1 ? stretch : stretch.slice(0, lineEnd))].length;
};
