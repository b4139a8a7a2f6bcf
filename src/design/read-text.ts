// From text to a tree of nodes, by the `yaml` library's failsafe schema: every scalar stays the text that it is.
// What YAML can do and a design does without, and what YAML would silently lose, becomes a finding here.

import { type Document, isAlias, isMap, isScalar, isSeq, type Pair, parseDocument } from "yaml";
import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { type LoneKey, lostValues } from "./lost-values.ts";
import { rereadLine } from "./reread-line.ts";
import { type Source, spanIn } from "./source.ts";
import { syntaxFindings } from "./syntax-findings.ts";
import { capFindings } from "./text-caps.ts";
import { about, joinedPath, type MapEntry, type TextNode } from "./text-node.ts";

export interface ReadText {
  /** null where the text can't be taken as a tree; there is a finding then. */
  readonly root: TextNode | null;
  readonly findings: readonly Finding[];
}

/**
 * The last texts are kept with their trees: a file's kind, its includes and its design are asked for one after another,
 * and parsing is nine tenths of the work (60 components: 9 of 10 ms).
 */
export const readText = (source: Source): ReadText => {
  const kept = KEPT.get(source.hash);
  if (kept !== undefined && kept.file === source.file && kept.text === source.text) {
    return kept.read;
  }
  const read = rereadText(source) ?? parsedText(source);
  KEPT.delete(source.hash);
  KEPT.set(source.hash, { file: source.file, text: source.text, read });
  const [oldest] = KEPT.keys();
  if (KEPT.size > MOST_KEPT && oldest !== undefined) {
    KEPT.delete(oldest);
  }
  return read;
};

const KEPT = new Map<
  string,
  { readonly file: string; readonly text: string; readonly read: ReadText }
>();
/** A console of a dozen panels with its workshop and parts, twice over. */
const MOST_KEPT = 32;

/** From the last text of the same file, where both are sound and one line tells them apart. */
const rereadText = (source: Source): ReadText | null => {
  const known = [...KEPT.values()].findLast(({ file }) => file === source.file);
  const before = known?.read.findings.length === 0 ? known.read.root : null;
  if (known === undefined || before === null || capFindings(source).length > 0) return null;
  const root = rereadLine({ text: known.text, root: before }, source.text, (words, path) =>
    loneEntry({ ...source, text: words }, path),
  );
  return root === null ? null : { root, findings: [] };
};

/** A line by itself: one key with its value, and nothing wrong with it. */
const loneEntry = (line: Source, path: string): MapEntry | null => {
  const parsed = parsedDocument(line);
  if (parsed === null || parsed.errors.length > 0 || parsed.contents === null) return null;
  const walk: Walk = { source: line, findings: [] };
  const node = nodeOf(walk, parsed.contents, path);
  if (walk.findings.length > 0 || node.kind !== "map" || node.flow) return null;
  const [entry, ...others] = node.entries;
  const isWhole = entry?.value.span.end === line.text.length && others.length === 0;
  return isWhole && !isOpenBelow(entry.value) ? entry : null;
};

/** What its next lines may belong to. */
const isOpenBelow = (value: TextNode): boolean =>
  value.kind === "empty" || (value.kind === "scalar" && value.style === "block");

const parsedText = (source: Source): ReadText => {
  const refused = capFindings(source);
  if (refused.length > 0) {
    return { root: null, findings: refused };
  }
  const parsed = parsedDocument(source);
  const wrong = syntaxFindings(source, parsed?.errors ?? null);
  if (parsed === null || wrong.length > 0) {
    return { root: null, findings: wrong };
  }
  const walk: Walk = { source, findings: [] };
  const root = parsed.contents === null ? null : nodeOf(walk, parsed.contents, "");
  return root === null || root.kind === "empty"
    ? { root: null, findings: [emptyFile(source)] }
    : { root, findings: walk.findings };
};

const OPTIONS = {
  version: "1.2",
  schema: "failsafe",
  uniqueKeys: false,
  merge: false,
  prettyErrors: false,
  logLevel: "silent",
} as const;

/** null where the library itself gives up (nesting that no look beforehand has caught). */
const parsedDocument = (source: Source): Document.Parsed | null => {
  try {
    return parseDocument(source.text, OPTIONS);
  } catch {
    return null;
  }
};

const emptyFile = (source: Source): Finding =>
  finding(TEXT_CODES.empty, {
    message: "the file says nothing; it begins with `consolewright: 1`, its kind and its name",
    span: spanIn(source, 0, 0),
  });

/** One walk over one text: the findings are collected as it goes. */
interface Walk {
  readonly source: Source;
  readonly findings: Finding[];
}

const nodeOf = (walk: Walk, node: unknown, path: string): TextNode => {
  refuseProperties(walk, node, path);
  if (isScalar(node)) {
    return scalarNode(walk, node, path);
  }
  const span = spanOfNode(walk.source, node);
  if (isMap(node)) {
    const flow = node.flow === true;
    return { kind: "map", flow, entries: entriesOf(walk, node, path), span, path };
  }
  if (isSeq(node)) {
    const items = node.items.map((item, index) => nodeOf(walk, item, joinedPath(path, `${index}`)));
    return { kind: "list", flow: node.flow === true, items, span, path };
  }
  return { kind: "unreadable", span, path };
};

interface ScalarLike {
  readonly value: unknown;
  readonly type?: string | undefined;
  readonly range?: readonly [number, number, number] | null | undefined;
}

const scalarNode = (walk: Walk, node: ScalarLike, path: string): TextNode => {
  const text = typeof node.value === "string" ? node.value : "";
  const span = spanOfNode(walk.source, node);
  const style = STYLES[node.type ?? "PLAIN"] ?? "plain";
  const eaten = style === "plain" ? eatenBy(walk.source, span.end) : null;
  return text === "" && style === "plain"
    ? { kind: "empty", span, path, eaten }
    : { kind: "scalar", text, style, span, path, eaten };
};

const STYLES: Readonly<Record<string, "quoted" | "block">> = {
  QUOTE_DOUBLE: "quoted",
  QUOTE_SINGLE: "quoted",
  BLOCK_LITERAL: "block",
  BLOCK_FOLDED: "block",
};

/** The comment behind a plain value, where nothing separates its # from its first letter. */
const eatenBy = (source: Source, end: number): Span | null => {
  const comment = /[ \t]*(#[^\s#][^\r\n]*)/y;
  comment.lastIndex = end;
  const words = comment.exec(source.text)?.[1];
  const start = comment.lastIndex - (words?.length ?? 0);
  return words === undefined ? null : spanIn(source, start, start + words.trimEnd().length);
};

const entriesOf = (
  walk: Walk,
  map: { readonly items: readonly Pair<unknown, unknown>[]; readonly flow?: boolean | undefined },
  path: string,
): readonly MapEntry[] => {
  const entries: (MapEntry | LoneKey)[] = [];
  for (const pair of map.items) {
    const keyNode = nodeOf(walk, pair.key, path);
    if (keyNode.kind !== "scalar") {
      walk.findings.push(...keyRefused(keyNode));
      continue;
    }
    const { text: key, span: keySpan } = keyNode;
    if (key === "<<") {
      walk.findings.push(mergeKey(keyNode));
    } else if (pair.value === null || pair.value === undefined) {
      entries.push({ kind: "lone-key", key, keySpan, path: joinedPath(path, key) });
    } else {
      entries.push({ key, keySpan, value: nodeOf(walk, pair.value, joinedPath(path, key)) });
    }
  }
  const kept = lostValues(walk.source, entries, map.flow === true);
  walk.findings.push(...kept.findings);
  return kept.entries;
};

const keyRefused = (node: TextNode): readonly Finding[] =>
  node.kind === "unreadable"
    ? []
    : [
        finding(TEXT_CODES.keyWithoutValue, {
          message: `${about(node)}a key is a single word; here stands ${KEY_SHAPES[node.kind]}`,
          span: node.span,
        }),
      ];

const KEY_SHAPES = {
  scalar: "a text",
  empty: "nothing before the colon",
  map: "a group of keys",
  list: "a list",
} as const;

const mergeKey = (node: TextNode): Finding =>
  finding(TEXT_CODES.mergeKey, {
    message: `${about(node)}merge keys (<<) are not used in designs; write the keys out`,
    span: node.span,
  });

const refuseProperties = (walk: Walk, node: unknown, path: string): void => {
  const span = spanOfNode(walk.source, node);
  const at = about({ path });
  if (isAlias(node)) {
    const message = `${at}*${node.source} is an alias; write the value, in quotation marks if the * belongs to it`;
    walk.findings.push(finding(TEXT_CODES.alias, { message, span }));
    return;
  }
  if (!(isScalar(node) || isMap(node) || isSeq(node))) {
    return;
  }
  if (node.anchor !== undefined) {
    const message = `${at}&${node.anchor} is an anchor; take it out, or put the text in quotation marks`;
    const place = before(walk.source, `&${node.anchor}`, span.start);
    walk.findings.push(finding(TEXT_CODES.anchor, { message, span: place }));
  }
  if (node.tag !== undefined) {
    const message = `${at}a tag (!) stands before the value; take it out, or put the text in quotation marks`;
    const place = before(walk.source, "!", span.start);
    walk.findings.push(finding(TEXT_CODES.tag, { message, span: place }));
  }
};

/** The place of what stands in front of a value. */
const before = (source: Source, mark: string, start: number): Span => {
  const at = source.text.lastIndexOf(mark, start);
  return at === -1 ? spanIn(source, start, start) : spanIn(source, at, at + mark.length);
};

const spanOfNode = (source: Source, node: unknown): Span => {
  const ranged = isAlias(node) || isScalar(node) || isMap(node) || isSeq(node);
  const range = ranged ? node.range : null;
  return spanIn(source, range?.[0] ?? 0, range?.[1] ?? 0);
};
