// A text that differs in one line from one whose tree is known, as from an edit of a place: only that line is parsed, and the
// rest of the tree is moved along. Gives null wherever anything but that line could be read in another way.

import type { Span } from "../diagnostics/finding.ts";
import { fromSameWords } from "./moved-words.ts";
import type { MapEntry, TextNode } from "./text-node.ts";

/** The key with its value that a line holds, as it would stand in a map at `path`; null where it is anything else. */
export type LineReader = (words: string, path: string) => MapEntry | null;

export const rereadLine = (
  known: { readonly text: string; readonly root: TextNode },
  text: string,
  read: LineReader,
): TextNode | null => {
  const line = changedLine(known.text, text);
  return line === null ? null : withLine(known.root, line, read);
};

interface ChangedLine {
  /** Where its words begin in both texts, behind the indentation and the dashes. */
  readonly start: number;
  /** Where they ended in the known text. */
  readonly end: number;
  readonly words: string;
  /** How far everything behind it moves. */
  readonly by: number;
}

const changedLine = (before: string, now: string): ChangedLine | null => {
  const same = sharedStart(before, now);
  const first = before.lastIndexOf("\n", same - 1) + 1;
  const last = lineEnd(before, same);
  const by = now.length - before.length;
  const end = lineEnd(now, same);
  // Whatever is behind the line is what it was, and the line is still one.
  if (end !== last + by || before.slice(last) !== now.slice(end)) return null;
  const [one, other] = [LINE.exec(before.slice(first, last)), LINE.exec(now.slice(first, end))];
  const lead = one?.[1] ?? "";
  const words = other?.[2] ?? "";
  if (one === null || other === null || other[1] !== lead || other[3] !== one[3]) return null;
  const start = first + lead.length;
  return { start, end: start + (one[2] ?? "").length, words, by };
};

/** Indentation and dashes, a key of letters with its value, and the space behind. */
const LINE = /^( *(?:- +)*)([A-Za-z0-9_][\w.-]*: +\S(?:.*\S)?)(\s*)$/;

const sharedStart = (a: string, b: string): number => {
  const most = Math.min(a.length, b.length);
  let at = 0;
  while (at < most && a.charCodeAt(at) === b.charCodeAt(at)) at += 1;
  return at;
};

const lineEnd = (text: string, at: number): number => {
  const end = text.indexOf("\n", at);
  return end < 0 ? text.length : end;
};

/** null where the line is no entry of its own in a map of the block form. */
const withLine = (node: TextNode, line: ChangedLine, read: LineReader): TextNode | null => {
  // Its beginning stands before the line, its end behind it.
  const span = { ...node.span, end: node.span.end + line.by };
  if (node.kind === "list" && !node.flow) {
    const items = spliced(node.items, line, {
      spanOf: (item) => item.span,
      changed: (item) => withLine(item, line, read),
      moved,
    });
    return items === null ? null : { ...node, items, span };
  }
  if (node.kind === "map" && !node.flow) {
    const entries = spliced(node.entries, line, {
      spanOf: wholeSpan,
      changed: (entry) => changedEntry(entry, node.path, { line, read }),
      moved: movedEntry,
    });
    return entries === null ? null : { ...node, entries, span };
  }
  return null;
};

const changedEntry = (
  entry: MapEntry,
  path: string,
  { line, read }: { readonly line: ChangedLine; readonly read: LineReader },
): MapEntry | null => {
  if (entry.keySpan.start === line.start) {
    const made = entry.value.span.end === line.end ? read(line.words, path) : null;
    return made === null ? null : movedEntry(made, line.start);
  }
  const value = withLine(entry.value, line, read);
  return value === null ? null : { ...entry, value };
};

/** What stands before the line stays, what holds it is changed, what stands behind it is moved. */
const spliced = <Each>(
  all: readonly Each[],
  { start, end, by }: ChangedLine,
  how: {
    readonly spanOf: (one: Each) => Span;
    readonly changed: (one: Each) => Each | null;
    readonly moved: (one: Each, by: number) => Each;
  },
): readonly Each[] | null => {
  const at = all.findIndex((one) => {
    const span = how.spanOf(one);
    return span.start <= start && span.end >= end;
  });
  const one = all[at];
  const changed = one === undefined ? null : how.changed(one);
  if (changed === null) return null;
  const behind = all.slice(at + 1);
  return [
    ...all.slice(0, at),
    changed,
    ...(by === 0 ? behind : behind.map((each) => how.moved(each, by))),
  ];
};

const wholeSpan = ({ keySpan, value }: MapEntry): Span => ({ ...keySpan, end: value.span.end });

const movedSpan = (span: Span, by: number): Span => ({
  file: span.file,
  start: span.start + by,
  end: span.end + by,
});

const movedEntry = ({ key, keySpan, value }: MapEntry, by: number): MapEntry => ({
  key,
  keySpan: movedSpan(keySpan, by),
  value: moved(value, by),
});

const moved = (node: TextNode, by: number): TextNode => fromSameWords(movedNode(node, by), node);

const movedNode = (node: TextNode, by: number): TextNode => {
  const span = movedSpan(node.span, by);
  switch (node.kind) {
    case "map":
      return { ...node, entries: node.entries.map((entry) => movedEntry(entry, by)), span };
    case "list":
      return { ...node, items: node.items.map((item) => moved(item, by)), span };
    case "scalar":
    case "empty":
      return { ...node, span, eaten: node.eaten === null ? null : movedSpan(node.eaten, by) };
    case "unreadable":
      return { ...node, span };
  }
};
