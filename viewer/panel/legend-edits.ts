// The legend of a component, or of a member of a pattern, as it is typed, each line a line of it: a change of the panel's text.
// What is typed stays text, whatever it looks like. Pure: the text in, an edit out.

import {
  contentEnd,
  type Edit,
  nodeAt,
  type Path,
  removeKey,
  setKey,
} from "../../src/design/edit.ts";
import { quoted } from "../../src/design/quoted.ts";
import { rewritten, unchanged } from "../../src/design/rewriting.ts";
import { replacement, type Source } from "../../src/design/source.ts";
import type { TextNode } from "../../src/design/text-node.ts";

/** Nothing typed takes the legend off, with all that is said of it. */
export const legendTyped = (from: Source, entry: string, typed: string): Edit =>
  titleTyped(from, ["components", entry], typed);

/** The same of whatever has a legend at a path: the title of a border. */
export function titleTyped(from: Source, path: Path, typed: string): Edit {
  const legend = nodeAt(from, [...path, "legend"]);
  if (typed.trim() === "")
    return legend === null ? hasNone(nameAt(from, path)) : removeKey(from, path, "legend");
  const value = legendValue(typed);
  if (value === null) return lacksWords(`the legend of ${nameAt(from, path)}`);
  return legend?.kind === "map"
    ? setKey(from, [...path, "legend"], { key: "text", value })
    : setKey(from, path, { key: "legend", value });
}

/** The words of a legend by itself. */
export function wordsTyped(from: Source, path: Path, typed: string): Edit {
  if (typed.trim() === "") return refused("a legend by itself has words: take it off instead");
  const value = legendValue(typed);
  return value === null
    ? lacksWords(nameAt(from, path))
    : setKey(from, path, { key: "text", value });
}

const hasNone = (name: string): Edit => refused(`${name} has no legend`);

const lacksWords = (words: string): Edit => refused(`a line of ${words} has no words`);

/** A component by its name; a marking by its own, or by what it is. */
export function nameAt(from: Source, path: Path): string {
  const last = path.at(-1) ?? "";
  if (path[0] === "components") return last;
  const name = nodeAt(from, [...path, "name"]);
  return name?.kind === "scalar" ? name.text : `the ${last}`;
}

/** As the list of a pattern says of a member without one. */
export const NO_LEGEND = '""';

/** null where a line has no words. */
function legendValue(typed: string): string | null {
  const lines = typed.split(/\r?\n/);
  if (lines.some((line) => line.trim() === "")) return null;
  return lines.length === 1 ? quoted(typed) : `[${lines.map(quoted).join(", ")}]`;
}

export interface MemberLegend {
  readonly index: number;
  /** How many there are. */
  readonly members: number;
  readonly typed: string;
}

/** Of one member; nothing typed leaves it without one. `owner`: the pattern's own path. */
export function memberLegendTyped(
  from: Source,
  owner: Path,
  { index, members, typed }: MemberLegend,
): Edit {
  const value = typed.trim() === "" ? NO_LEGEND : legendValue(typed);
  const member = `${nameAt(from, owner)}.${index + 1}`;
  if (value === null) return lacksWords(`the legend of ${member}`);
  const path = wordsPath(owner);
  const list = nodeAt(from, path);
  if (list?.kind !== "list") {
    const common = commonWords(from, owner);
    const items = Array.from({ length: members }, (_, each) => (each === index ? value : common));
    if (items.every((item) => item === NO_LEGEND)) return hasNone(member);
    return rewritten(from, [
      (now) => legendsSet(now, owner, items),
      (now) => (common === NO_LEGEND ? unchanged(now) : removeKey(now, owner, "text")),
    ]);
  }
  const item = list.items[index];
  if (item === undefined) return refused(`the text has no place for the legend of ${member}`);
  if (item.kind === "map" && value !== NO_LEGEND)
    return setKey(from, [...path, `${index}`], { key: "text", value });
  const isLast = list.items.every((one, each) => each === index || textOf(from, one) === NO_LEGEND);
  if (value === NO_LEGEND && isLast)
    return isComponent(owner)
      ? removeKey(from, owner, "legends")
      : refused("legends by themselves have words: take them off instead");
  const span = { ...item.span, end: contentEnd(from, item) };
  return { kind: "edit", edit: replacement(from, span, value) };
}

const isComponent = ([top]: Path): boolean => top === "components";

/** What legends by themselves read where all of them read the same. */
function commonWords(from: Source, owner: Path): string {
  const text = isComponent(owner) ? null : nodeAt(from, [...owner, "text"]);
  return text === null ? NO_LEGEND : textOf(from, text);
}

/** The list of a pattern's legends, each as it is written; null where there is none. */
export function writtenLegends(from: Source, owner: Path): readonly string[] | null {
  const list = nodeAt(from, wordsPath(owner));
  return list?.kind === "list" ? list.items.map((item) => textOf(from, item)) : null;
}

export const legendsSet = (now: Source, owner: Path, items: readonly string[]): Edit =>
  setKey(now, owner, { key: wordsKey(owner), value: `[${items.join(", ")}]` });

const wordsKey = (owner: Path): string => (isComponent(owner) ? "legends" : "texts");

const wordsPath = (owner: Path): Path => [...owner, wordsKey(owner)];

const textOf = (from: Source, node: TextNode): string =>
  from.text.slice(node.span.start, contentEnd(from, node));

const refused = (why: string): Edit => ({ kind: "refused", why });
