// An example of a finding: a complete design in one text, with what must be found written as a comment on the line that it
// belongs to: `# fault checks/web measured 0.6 limit 1.5`, and `and 2 more` for what is counted with it.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Finding, Measure } from "../../src/diagnostics/finding.ts";
import { lineAndColumn } from "../../src/diagnostics/position.ts";
import { compile, fitOfProject } from "../../src/project.ts";
import { openKernel } from "../support/kernel.ts";
import { blackPng } from "../support/panel-photograph.ts";
import { testLibrary } from "../support/test-library.ts";

export const ENTRY = "panel.yaml";
const CONSOLE = "console.yaml";
/** What an example may name without writing it. */
const SHARED = ["shed.yaml", "six-modules.yaml"];

/** Files that an example may name: one is no solid, one no picture. */
const BINARIES: ReadonlyMap<string, Uint8Array> = new Map([
  ["broken.stl", new Uint8Array(4)],
  ["broken.jpg", new Uint8Array(4)],
  ["old.png", new Uint8Array(blackPng(1600, 1200))],
]);

const kernel = await openKernel();

export type Texts = ReadonlyMap<string, string>;

/**
 * The text up to a line `# file: NAME` is the panel, what follows that line is the file NAME. With a file console.yaml the
 * example is that console.
 */
export const readExample = (path: string): Texts => {
  const texts = new Map<string, string>(
    SHARED.map((file) => [file, readFileSync(join(import.meta.dirname, file), "utf8")]),
  );
  let [file, lines]: [string, string[]] = [ENTRY, []];
  for (const line of readFileSync(path, "utf8").split("\n")) {
    const next = /^# file: (\S+)$/.exec(line)?.[1];
    if (next === undefined) {
      lines.push(line);
      continue;
    }
    texts.set(file, lines.join("\n"));
    [file, lines] = [next, []];
  }
  texts.set(file, lines.join("\n"));
  return texts;
};

/** One line a finding: `panel.yaml:12 fault checks/web measured 0.6 limit 1.5`. */
export type Line = string;

const EXPECTATION =
  /# (fault|query|note) ([a-z]+\/[a-z-]+)(?: measured (-?[\d.]+) limit (-?[\d.]+))?(?: and (\d+) more)?/g;

export const expectedLines = (texts: Texts): readonly Line[] =>
  [...texts].flatMap(([file, text]) =>
    text.split("\n").flatMap((line, index) =>
      [...line.matchAll(EXPECTATION)].map((match) => {
        const [, severity = "", code = "", measured, limit, more = "0"] = match;
        return lineOf(`${file}:${index + 1}`, {
          severity,
          code,
          measured: measured === undefined ? null : Number(measured),
          limit: limit === undefined ? null : Number(limit),
          more: Number(more),
        });
      }),
    ),
  );

/** Faults and queries, and the notes that are asked for. */
export const foundLines = (texts: Texts, notes: ReadonlySet<string> = new Set()): readonly Line[] =>
  linesOf(findingsOf(texts), texts, notes);

export const linesOf = (
  findings: readonly Finding[],
  texts: Texts,
  notes: ReadonlySet<string>,
): readonly Line[] =>
  findings
    .filter(({ severity, code }) => severity !== "note" || notes.has(code))
    .map((found) => {
      const { line } = lineAndColumn(texts.get(found.span.file) ?? "", found.span.start);
      return lineOf(`${found.span.file}:${line}`, {
        severity: found.severity,
        code: found.code,
        measured: numberOf(found.measured),
        limit: numberOf(found.limit),
        more: found.suppressed,
      });
    });

/** A console is fitted once its places are without a fault. */
export const findingsOf = (texts: Texts): readonly Finding[] => {
  const entry = texts.has(CONSOLE) ? CONSOLE : ENTRY;
  const project = compile({ entry, files: texts, binaries: BINARIES }, testLibrary());
  return [
    ...project.findings,
    ...project.panels.flatMap(({ findings }) => findings),
    ...(project.console !== null && project.findings.every(({ severity }) => severity !== "fault")
      ? fitOfProject(project, project.console, kernel).findings
      : []),
  ];
};

export const notesIn = (texts: Texts): ReadonlySet<string> =>
  new Set(
    [...texts.values()].flatMap((text) =>
      [...text.matchAll(EXPECTATION)]
        .filter(([, severity]) => severity === "note")
        .map(([, , code]) => code ?? ""),
    ),
  );

const numberOf = (measure: Measure | null): number | null => measure?.value ?? null;

const lineOf = (
  place: string,
  of: {
    readonly severity: string;
    readonly code: string;
    readonly measured: number | null;
    readonly limit: number | null;
    readonly more: number;
  },
): Line => {
  const pair =
    of.measured === null || of.limit === null
      ? ""
      : ` measured ${rounded(of.measured)} limit ${rounded(of.limit)}`;
  return `${place} ${of.severity} ${of.code}${pair}${of.more === 0 ? "" : ` and ${of.more} more`}`;
};

/** To a hundredth, as findings are read. */
const rounded = (value: number): string => (Math.round(value * 100) / 100 + 0).toString();
