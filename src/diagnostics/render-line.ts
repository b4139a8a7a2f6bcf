// One line a finding, in the form that editors and build tools jump from: file:line:column: severity: message [code].

import type { Finding } from "./finding.ts";
import { lineAndColumn } from "./position.ts";
import { printable } from "./printable.ts";

/** `files` holds the text of each file that a finding points into; a file that is not there counts as empty. */
export const renderLine = (
  findings: readonly Finding[],
  files: ReadonlyMap<string, string>,
): string =>
  findings.map((found) => `${oneLine(found, files.get(found.span.file) ?? "")}\n`).join("");

const oneLine = (found: Finding, text: string): string => {
  const { line, column } = lineAndColumn(text, found.span.start);
  const place = `${found.span.file}:${line}:${column}`;
  return printable(`${place}: ${found.severity}: ${found.message} [${found.code}]`);
};
