// What is still open when a pack is written: queries as HOLD lines that a person must decide, notes below them.

import type { Finding } from "../diagnostics/finding.ts";
import { lineAndColumn } from "../diagnostics/position.ts";
import { markdownText } from "../export/markdown-table.ts";
import type { PackFile } from "./pack-file.ts";
import { paperFile } from "./paper-file.ts";

export const findingsPaper = (
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
): PackFile => {
  const lineOf = (found: Finding): string => {
    const { line } = lineAndColumn(texts.get(found.span.file) ?? "", found.span.start);
    const place = `${found.span.file}, line ${line}`;
    return `${markdownText(found.message)} (${markdownText(place)}; ${markdownText(found.code)})`;
  };
  const queries = findings.filter(({ severity }) => severity === "query");
  const notes = findings.filter(({ severity }) => severity === "note");
  const holds = queries.flatMap((found) => [
    `- [ ] **HOLD** ${lineOf(found)}`,
    ...found.remedies.map(({ title }) => `  - ${markdownText(title)}`),
  ]);
  return paperFile(
    "findings",
    "findings.md",
    [
      "# Findings",
      "",
      queries.length === 0
        ? "Nothing is held: no question is open."
        : "Decide each of these, and tick it, before the sheet is cut.",
      "",
      ...holds,
      ...(holds.length === 0 ? [] : [""]),
      ...(notes.length === 0 ? [] : ["## Worth knowing", ""]),
      ...notes.map((found) => `- ${lineOf(found)}`),
      ...(notes.length === 0 ? [] : [""]),
    ].join("\n"),
  );
};
