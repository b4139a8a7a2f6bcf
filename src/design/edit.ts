// Changes to a design as edits of its text: a value replaced, a key set or taken out, an item added to a list.
// Comments, order and spacing of everything else stay. Values are given as YAML on one line: see `quoted`.

import type { Span } from "../diagnostics/finding.ts";
import type { TextEdit } from "../diagnostics/text-edit.ts";
import { flowRemoval } from "./flow-removal.ts";
import { readText } from "./read-text.ts";
import { replacement, type Source, spanIn } from "./source.ts";
import type { ListNode, MapEntry, MapNode, TextNode } from "./text-node.ts";

export type Edit =
  | { readonly kind: "edit"; readonly edit: TextEdit }
  | { readonly kind: "refused"; readonly why: string };

/** Keys from the root to a map or list; items of lists by number: ["markings", "0", "border"]. */
export type Path = readonly string[];

/** The value that stands in a span, replaced. */
export const replaceValue = (from: Source, span: Span, value: string): TextEdit =>
  replacement(from, span, value);

/** Gives a key of the map at `path` a value: its own is replaced, or the key is added behind the last one. */
export const setKey = (
  from: Source,
  path: Path,
  { key, value }: { readonly key: string; readonly value: string },
): Edit => {
  const map = mapAt(from, path);
  if (typeof map === "string") {
    return refuse(map);
  }
  const entries = map.entries.filter((entry) => entry.key === key);
  const [entry] = entries;
  if (entries.length > 1) {
    return refuse(`${key} is written twice`);
  }
  if (value.includes("\n")) {
    return refuse("the value runs over more than one line");
  }
  return entry === undefined
    ? addedEntry(from, map, `${key}: ${value}`)
    : changed(
        from,
        valueSpan(from, entry.value),
        entry.value.kind === "empty" ? ` ${value}` : value,
      );
};

/** Takes a key and its value out of the map at `path`. Comment lines above it stay. */
export const removeKey = (from: Source, path: Path, key: string): Edit => {
  const map = mapAt(from, path);
  if (typeof map === "string") {
    return refuse(map);
  }
  const index = map.entries.findIndex((entry) => entry.key === key);
  const entry = map.entries[index];
  if (entry === undefined) {
    return refuse(`there is no ${key}`);
  }
  if (
    /\?[ \t]*$/.test(
      from.text.slice(lineStart(from.text, entry.keySpan.start), entry.keySpan.start),
    )
  ) {
    return refuse(`${key} is written with a question mark before it`);
  }
  if (map.entries.length === 1) {
    return path.length === 0
      ? refuse("a file can't be left without keys")
      : changed(from, valueSpan(from, map), "{}");
  }
  if (!map.flow) return changed(from, blockEntrySpan(from, map, index), "");
  const ends = map.entries.map(({ keySpan, value }) => ({
    start: keySpan.start,
    end: contentEnd(from, value),
  }));
  return { kind: "edit", edit: flowRemoval(from, ends, index) };
};

/** Adds an item behind the last one of the list at `path`. */
export const appendItem = (from: Source, path: Path, item: string): Edit => {
  const list = nodeAt(from, path);
  if (list?.kind !== "list") {
    return refuse(`there is no list at ${path.join(".")}`);
  }
  if (item.includes("\n")) {
    return refuse("the item runs over more than one line");
  }
  return list.flow ? addedInFlow(from, list, item) : addedDash(from, list, item);
};

/** Takes an item out of the list at `path`, with its dash. Comment lines above it stay. */
export const removeItem = (from: Source, path: Path, index: number): Edit => {
  const list = nodeAt(from, path);
  const item = list?.kind === "list" ? list.items[index] : undefined;
  if (list?.kind !== "list" || item === undefined)
    return refuse(`there is no item ${index + 1} at ${path.join(".")}`);
  if (list.items.length === 1) return changed(from, valueSpan(from, list), "[]");
  if (!list.flow) return withoutDash(from, item);
  const ends = list.items.map((one) => ({ start: one.span.start, end: contentEnd(from, one) }));
  return { kind: "edit", edit: flowRemoval(from, ends, index) };
};

/** The node at a path; null where there is none or the text can't be read. */
export const nodeAt = (from: Source, path: Path): TextNode | null => {
  let node: TextNode | null = readText(from).root;
  for (const step of path) {
    node = childOf(node, step);
  }
  return node;
};

const childOf = (node: TextNode | null, step: string): TextNode | null => {
  switch (node?.kind) {
    case "map":
      return node.entries.find(({ key }) => key === step)?.value ?? null;
    case "list":
      return /^\d+$/.test(step) ? (node.items[Number(step)] ?? null) : null;
    case "scalar":
    case "empty":
    case "unreadable":
    case undefined:
      return null;
  }
};

const refuse = (why: string): Edit => ({ kind: "refused", why });

const changed = (from: Source, span: Span, text: string): Edit => ({
  kind: "edit",
  edit: replacement(from, span, text),
});

const mapAt = (from: Source, path: Path): MapNode | string => {
  const node = nodeAt(from, path);
  return node?.kind === "map"
    ? node
    : `there is no group of keys at ${path.join(".") || "the root"}`;
};

const valueSpan = (from: Source, node: TextNode): Span =>
  spanIn(from, node.span.start, contentEnd(from, node));

/** Where a value's last character stands: the tree's own ends reach over blank lines and comments. */
export const contentEnd = (from: Source, node: TextNode): number => {
  const last = node.kind === "map" ? node.entries.at(-1)?.value : lastItem(node);
  if (last !== undefined && (node.kind === "map" || node.kind === "list") && !node.flow) {
    return contentEnd(from, last);
  }
  const isBlock = node.kind === "scalar" && node.style === "block";
  return isBlock
    ? node.span.start + from.text.slice(node.span.start, node.span.end).trimEnd().length
    : node.span.end;
};

const lastItem = (node: TextNode): TextNode | undefined =>
  node.kind === "list" ? node.items.at(-1) : undefined;

const addedEntry = (from: Source, map: MapNode, entry: string): Edit => {
  if (map.flow) {
    return addedInFlow(from, map, entry);
  }
  const first = map.entries[0];
  return first === undefined
    ? refuse("the group of keys has no first key to stand beside")
    : addedLine(from, map, { entry, column: columnOf(from.text, first.keySpan.start) });
};

const addedDash = (from: Source, list: ListNode, item: string): Edit => {
  const start = list.items[0]?.span.start ?? list.span.start;
  const dash = from.text.lastIndexOf("-", start - 1);
  return dash === -1 || from.text.slice(dash + 1, start).trim() !== ""
    ? refuse("the list's dashes can't be found")
    : addedLine(from, list, { entry: `- ${item}`, column: columnOf(from.text, dash) });
};

/** A line of its own behind the last line of a block map or list, comments on that line included. */
const addedLine = (
  from: Source,
  node: MapNode | ListNode,
  { entry, column }: { readonly entry: string; readonly column: number },
): Edit => {
  const end = lineEnd(from.text, contentEnd(from, node));
  const lineBreak = from.text.includes("\r\n") ? "\r\n" : "\n";
  return changed(from, spanIn(from, end, end), `${lineBreak}${" ".repeat(column)}${entry}`);
};

const addedInFlow = (from: Source, node: MapNode | ListNode, entry: string): Edit => {
  const last = node.kind === "map" ? node.entries.at(-1)?.value : node.items.at(-1);
  if (last === undefined) {
    const text = node.kind === "map" ? `{ ${entry} }` : `[${entry}]`;
    return changed(from, node.span, text);
  }
  const end = contentEnd(from, last);
  return changed(from, spanIn(from, end, end), `, ${entry}`);
};

const withoutDash = (from: Source, item: TextNode): Edit => {
  const dash = from.text.lastIndexOf("-", item.span.start - 1);
  const first = lineStart(from.text, dash);
  if (dash === -1 || from.text.slice(first, dash).trim() !== "")
    return refuse("the list's dashes can't be found");
  return changed(from, wholeLines(from, first, contentEnd(from, item)), "");
};

const endOf = (from: Source, entry: MapEntry | undefined, otherwise: number): number =>
  entry === undefined ? otherwise : contentEnd(from, entry.value);

/** The lines of an entry. One that shares its line with a dash makes room for the next one on that line. */
const blockEntrySpan = (from: Source, map: MapNode, index: number): Span => {
  const entry = map.entries[index];
  const start = entry?.keySpan.start ?? map.span.start;
  const first = lineStart(from.text, start);
  const next = map.entries[index + 1];
  if (from.text.slice(first, start).trim() !== "" && next !== undefined) {
    return spanIn(from, start, next.keySpan.start);
  }
  return wholeLines(from, first, endOf(from, entry, start));
};

/** From a line's start to the end of the line on which a value ends, one line break with it. */
const wholeLines = (from: Source, first: number, lastCharacter: number): Span => {
  const end = lineEnd(from.text, lastCharacter);
  const behind = from.text.startsWith("\r\n", end) ? end + 2 : end + 1;
  return behind <= from.text.length
    ? spanIn(from, first, behind)
    : spanIn(from, breakBefore(from.text, first), end);
};

/** Where the line break before a line begins. */
const breakBefore = (text: string, start: number): number =>
  text.startsWith("\r\n", start - 2) ? start - 2 : Math.max(0, start - 1);

const lineStart = (text: string, at: number): number => {
  const start = text.lastIndexOf("\n", at - 1) + 1;
  return start === 0 && text.startsWith("\uFEFF") && at > 0 ? 1 : start;
};

/** The end of the line that an offset is on, before its line break. */
const lineEnd = (text: string, at: number): number => {
  const feed = text.indexOf("\n", at);
  const end = feed === -1 ? text.length : feed;
  return text[end - 1] === "\r" && end > at ? end - 1 : end;
};

const columnOf = (text: string, at: number): number => at - lineStart(text, at);
