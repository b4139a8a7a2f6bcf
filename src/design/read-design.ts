// The door to this folder: a file's text becomes a design with the findings of reading it.
// Everything that can be read is read; `design` is null only where a part that nothing can do without is missing.

import { comparedTexts } from "../diagnostics/compared-texts.ts";
import { type CodeEntry, type Finding, finding } from "../diagnostics/finding.ts";
import { inWords, nearestNames } from "../diagnostics/nearest.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import type { ConsoleDesign } from "./console-design.ts";
import { CONSOLE } from "./console-fields.ts";
import { type Field, type Reading, readOnce } from "./field.ts";
import { FILE_KINDS, type FileKind } from "./file-keys.ts";
import type { PanelDesign } from "./panel-design.ts";
import { PANEL } from "./panel-fields.ts";
import { type ReadText, readText } from "./read-text.ts";
import { wrongShape } from "./scalar-field.ts";
import { type Source, shortened, source, spanIn } from "./source.ts";
import type { MapNode, TextNode } from "./text-node.ts";
import { FORMAT_VERSION } from "./usual-values.ts";
import type { WorkshopDesign } from "./workshop-design.ts";
import { WORKSHOP } from "./workshop-fields.ts";

export type Design = PanelDesign | ConsoleDesign | WorkshopDesign;

export interface ReadDesign {
  readonly design: Design | null;
  /** In the order of the text. */
  readonly findings: readonly Finding[];
}

/** `file` is the path from the root of the design, with forward slashes. */
export const readDesign = (file: string, text: string): ReadDesign => {
  const from = source(file, text);
  const parsed = readText(from);
  const head = fileHead(from, parsed);
  if (head.kind === null) {
    return { design: null, findings: inOrder([...parsed.findings, ...head.findings]) };
  }
  const reading = designReading(head.root, from, head.kind);
  const findings = inOrder([...parsed.findings, ...head.findings, ...reading.findings]);
  return reading.kind === "read"
    ? { design: reading.value, findings: named(findings, reading.value.name) }
    : { design: null, findings };
};

/** What a file says it is; null where it does not say, or can't be read that far. */
export const fileKind = (file: string, text: string): FileKind | null => {
  const from = source(file, text);
  return fileHead(from, readText(from)).kind;
};

type FileHead =
  | { readonly kind: FileKind; readonly root: MapNode; readonly findings: readonly Finding[] }
  | { readonly kind: null; readonly findings: readonly Finding[] };

const fileHead = (from: Source, { root }: ReadText): FileHead => {
  if (root === null) {
    return { kind: null, findings: [] };
  }
  if (root.kind !== "map") {
    const what = "a design begins with `consolewright: 1`, its kind and its name; that";
    return { kind: null, findings: wrongShape(root, what) };
  }
  const version = root.entries.find(({ key }) => key === "consolewright")?.value;
  if (version?.kind === "scalar" && version.text !== FORMAT_VERSION) {
    return { kind: null, findings: [otherVersion(version.text, version)] };
  }
  const entry = root.entries.find(({ key }) => key === "kind")?.value;
  const kind = FILE_KINDS.find((word) => entry?.kind === "scalar" && entry.text === word);
  return kind === undefined
    ? { kind: null, findings: [unknownKind(from, entry)] }
    : { kind, root, findings: [] };
};

const designReading = (root: MapNode, from: Source, kind: FileKind): Reading<Design> => {
  const field: Field<Design> | null = DESIGN_FIELDS[kind];
  return field === null
    ? {
        kind: "unread",
        span: root.span,
        findings: [
          told(
            MEANING_CODES.otherKind,
            "this is a list of parts; name it under `catalogue` in a panel or a console",
            root.entries.find(({ key }) => key === "kind")?.value ?? root,
          ),
        ],
      }
    : field.read(root, from);
};

/** By kind of file; parts are read by the catalogue. To add a kind of file: its word in FILE_KINDS, its line here. */
export const DESIGN_FIELDS = {
  panel: readOnce(PANEL),
  console: readOnce(CONSOLE),
  workshop: readOnce(WORKSHOP),
  parts: null,
} as const satisfies Readonly<Record<FileKind, Field<Design> | null>>;

const told = (code: CodeEntry, message: string, { span }: Pick<TextNode, "span">): Finding =>
  finding(code, { message, span });

const otherVersion = (version: string, node: TextNode): Finding =>
  told(
    MEANING_CODES.formatVersion,
    `the file is written in version ${shortened(version)} of the format; this program reads version ${FORMAT_VERSION}`,
    node,
  );

const unknownKind = (from: Source, node: TextNode | undefined): Finding => {
  if (node?.kind !== "scalar") {
    const message = `the file does not say what it is; write \`kind: panel\`, or ${inWords(FILE_KINDS.slice(1))}`;
    return told(MEANING_CODES.unknownKind, message, { span: node?.span ?? spanIn(from, 0, 0) });
  }
  const nearest = nearestNames(node.text, FILE_KINDS);
  const message = `${shortened(node.text)} is not a kind of file; the nearest are ${inWords(nearest, "and")}`;
  return told(MEANING_CODES.unknownKind, message, node);
};

const inOrder = (findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted((a, b) => a.span.start - b.span.start || comparedTexts(a.code, b.code));

const named = (findings: readonly Finding[], panel: string): readonly Finding[] =>
  findings.map((found) => (found.panel === "" ? { ...found, panel } : found));
