// The place of an entry under `components`, rewritten: an axis set free at a coordinate of its own, a number replaced.
// Takes the file and the entry's name; keys of the place that say nothing any more go with the axis that they served.

import { type Edit, nodeAt, type Path, removeKey, replaceValue, setKey } from "./edit.ts";
import { PATTERN_KINDS } from "./pattern-kinds.ts";
import { rewritten, type Step, together } from "./rewriting.ts";
import type { Source } from "./source.ts";
import type { MapNode } from "./text-node.ts";

export interface FreePlace {
  /** As text with its unit; null where the axis keeps what it says. */
  readonly x: string | null;
  readonly y: string | null;
}

const ACROSS = ["x", "left", "right", "right-of", "left-of", "in-line-with"];
const ALONG = ["y", "bottom", "top", "above", "below", "level-with"];
const BESIDE = ["right-of", "left-of", "above", "below"];
const MEASURES = ["centres", "gap"];

/** Where the keys of an entry's place stand: under `at`, or among a pattern's own keys. */
export const placePath = (from: Source, entry: string): Path | null => {
  const own: Path = ["components", entry];
  if (nodeAt(from, [...own, "at"]) !== null) return [...own, "at"];
  const pattern = PATTERN_KINDS.find((key) => nodeAt(from, [...own, key]) !== null);
  return pattern === undefined ? null : [...own, pattern];
};

/** The place at a path, whatever it belongs to, at coordinates of its own. */
export const setPlaceFree = (from: Source, path: Path, place: FreePlace): Edit => {
  const node = nodeAt(from, path);
  if (node === null) return { kind: "refused", why: `there is no place at ${path.join(".")}` };
  if (node.kind !== "map")
    return place.x === null || place.y === null
      ? { kind: "refused", why: "it is placed by a word, which says both axes" }
      : { kind: "edit", edit: replaceValue(from, node.span, `{ x: ${place.x}, y: ${place.y} }`) };
  return isSaid(node, place)
    ? together(
        from,
        (["x", "y"] as const).flatMap((key) => {
          const value = place[key];
          return value === null ? [] : [setKey(from, path, { key, value })];
        }),
      )
    : rewritten(from, freeingSteps(node, path, place));
};

/** Whether it stands by such numbers already: their values alone change, and the text need not be read in between. */
const isSaid = ({ entries }: MapNode, { x, y }: FreePlace): boolean => {
  const keys = entries.map(({ key }) => key);
  const served = [...(x === null ? [] : ACROSS), ...(y === null ? [] : ALONG), ...MEASURES];
  return (
    (x === null || keys.includes("x")) &&
    (y === null || keys.includes("y")) &&
    keys.every((key) => key === "x" || key === "y" || !served.includes(key))
  );
};

const freeingSteps = (map: MapNode, path: Path, place: FreePlace): readonly Step[] => {
  const written = map.entries.map(({ key }) => key);
  const gone = [
    ...(place.x === null ? [] : ACROSS.filter((key) => key !== "x")),
    ...(place.y === null ? [] : ALONG.filter((key) => key !== "y")),
  ].filter((key) => written.includes(key));
  const leans = written.some((key) => BESIDE.includes(key) && !gone.includes(key));
  const measures = leans ? [] : MEASURES.filter((key) => written.includes(key));
  const set = (key: "x" | "y", value: string | null): readonly Step[] =>
    value === null ? [] : [(from) => setKey(from, path, { key, value })];
  return [
    ...set("x", place.x),
    ...set("y", place.y),
    ...[...gone, ...measures].map(
      (key): Step =>
        (from) =>
          removeKey(from, path, key),
    ),
  ];
};
