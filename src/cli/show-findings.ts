// Findings on the error stream: faults and queries in full, notes counted in one line unless they are asked for.
// Colour only underlines what the words say already.

import type { Finding, Severity } from "../diagnostics/finding.ts";
import { renderHuman } from "../diagnostics/render-human.ts";
import { renderLine } from "../diagnostics/render-line.ts";
import type { Shell } from "./shell.ts";

export interface FindingsStyle {
  readonly notes: boolean;
  /** One line a finding, for editors. */
  readonly lines: boolean;
}

export const showFindings = (
  findings: readonly Finding[],
  files: ReadonlyMap<string, string>,
  options: { readonly shell: Shell; readonly style: FindingsStyle },
): void => {
  const { shell, style } = options;
  const shown = findings.filter(({ severity }) => style.notes || severity !== "note");
  if (shown.length === 0) return;
  const text = style.lines ? renderLine(shown, files) : `${renderHuman(shown, files)}\n`;
  shell.stderr(shell.colour ? coloured(text) : text);
};

/** "2 faults, 1 query, no notes". */
export const countsInWords = (findings: readonly Finding[]): string => {
  const count = (severity: Severity): number =>
    findings.filter((found) => found.severity === severity).length;
  const words = (number: number, one: string, many: string): string =>
    `${number === 0 ? "no" : number} ${number === 1 ? one : many}`;
  return [
    words(count("fault"), "fault", "faults"),
    words(count("query"), "query", "queries"),
    words(count("note"), "note", "notes"),
  ].join(", ");
};

export const hasFault = (findings: readonly Finding[]): boolean =>
  findings.some(({ severity }) => severity === "fault");

/** Bold red, bold yellow, bold cyan (ECMA-48, 8.3.117: select graphic rendition). */
const PAINT: Readonly<Record<string, string>> = { fault: "1;31", query: "1;33", note: "1;36" };

const coloured = (text: string): string =>
  text.replace(/^(.*?)\b(fault|query|note):/gm, (whole, before: string, word: string) =>
    // Only at the head of a line, or behind the place that an editor jumps to.
    before === "" || /:\d+:\d+: $/.test(before)
      ? `${before}\u001b[${PAINT[word] ?? "1"}m${word}:\u001b[0m`
      : whole,
  );
