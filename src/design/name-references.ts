// Where a panel's text names its components by their names: neighbours in places, members of borders, brackets and lit
// areas. What is renamed or taken off must be followed there. Takes the file's text, gives each naming with its path.

import type { TextEdit } from "../diagnostics/text-edit.ts";
import { type Path, replaceValue } from "./edit.ts";
import { entryName } from "./entry-name.ts";
import { PATTERN_KINDS } from "./pattern-kinds.ts";
import { readText } from "./read-text.ts";
import type { Source } from "./source.ts";
import type { ScalarNode, TextNode } from "./text-node.ts";

export interface NameReference {
  /** "brake", or a member: "warn.3". */
  readonly name: string;
  readonly path: Path;
  readonly node: ScalarNode;
  /** A neighbour of what stands by it; a member of what goes round it. */
  readonly as: "neighbour" | "member";
}

export const nameReferences = (from: Source): readonly NameReference[] => {
  const { root } = readText(from);
  if (root === null) return [];
  const top = (key: string): readonly Found[] => named({ node: root, path: [] }, [key]);
  const components = top("components").flatMap(below);
  const markings = top("markings").flatMap(below).flatMap(below);
  const fixings = top("fixings")
    .flatMap((all) => named(all, ["at", "dowels-at"]))
    .flatMap(below);
  const lit = top("stack")
    .flatMap(below)
    .flatMap((layer) => named(layer, ["lighting"]))
    .flatMap((lighting) => named(lighting, ["apart"]))
    .flatMap(below);
  const places = [
    ...components.flatMap((each) => named(each, ["at", ...PATTERN_KINDS])),
    ...markings.flatMap((each) => named(each, ["at", "from", "to", ...PATTERN_KINDS])),
    ...fixings.flatMap((each) => [each, ...named(each, ["at", ...PATTERN_KINDS])]),
  ];
  const groups = [...markings, ...lit].flatMap((each) => named(each, ["around"]));
  return [
    ...places.flatMap((place) => named(place, NEIGHBOURS)).flatMap(naming("neighbour")),
    ...groups.flatMap(below).flatMap(naming("member")),
  ];
};

/** Every naming of these under its new name; a member keeps its number where the new name has none. */
export const renamedReferences = (
  from: Source,
  names: ReadonlyMap<string, string>,
): readonly TextEdit[] =>
  nameReferences(from).flatMap(({ name, node }) => {
    const entry = entryName(name);
    const now = names.get(entry);
    return now === undefined
      ? []
      : [replaceValue(from, node.span, `${now}${name.slice(entry.length)}`)];
  });

const NEIGHBOURS = ["right-of", "left-of", "above", "below", "level-with", "in-line-with"];

interface Found {
  readonly node: TextNode;
  readonly path: Path;
}

const naming =
  (as: NameReference["as"]) =>
  ({ node, path }: Found): readonly NameReference[] =>
    node.kind === "scalar" ? [{ name: node.text, path, node, as }] : [];

const named = ({ node, path }: Found, keys: readonly string[]): readonly Found[] =>
  node.kind === "map"
    ? node.entries
        .filter(({ key }) => keys.includes(key))
        .map(({ key, value }) => ({ node: value, path: [...path, key] }))
    : [];

/** A map's values or a list's items. */
const below = ({ node, path }: Found): readonly Found[] => {
  switch (node.kind) {
    case "map":
      return node.entries.map(({ key, value }) => ({ node: value, path: [...path, key] }));
    case "list":
      return node.items.map((item, index) => ({ node: item, path: [...path, `${index}`] }));
    case "scalar":
    case "empty":
    case "unreadable":
      return [];
  }
};
