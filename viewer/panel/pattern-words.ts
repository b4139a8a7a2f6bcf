// A row, a column or a ring as its text says it, and the things that may become one: all but their places and words alike. Pure.

import { nodeAt, type Path } from "../../src/design/edit.ts";
import { lengthIn } from "../../src/design/length-text.ts";
import type { Source } from "../../src/design/source.ts";
import { decimal } from "../../src/geometry/number.ts";
import { FULL_TURN } from "./clock-angle.ts";
import type { PatternKind, RegularPlaces } from "./regular-places.ts";

export interface PatternWords {
  /** Its own numbers, as they stand between the braces. */
  readonly numbers: string;
  /** Where it stands: the lowest of its members' coordinates. */
  readonly x: string;
  readonly y: string;
  /** What was made: "row of 3, pitch 20 mm". */
  readonly says: string;
}

export function patternWords<Thing>(
  kind: PatternKind,
  regular: Exclude<RegularPlaces<Thing>, { readonly kind: "refused" }>,
  unit: "mm" | "in",
): PatternWords {
  const { places } = regular;
  const length = (value: number): string => lengthIn(unit, value);
  const measure =
    regular.kind === "ring"
      ? `radius: ${length(regular.radius)}`
      : `pitch: ${length(regular.pitch)}`;
  const from =
    regular.kind === "ring" && regular.from !== 0 ? `, from: ${decimal(regular.from, 2)} deg` : "";
  return {
    numbers: `count: ${places.length}, ${measure}${from}`,
    x: length(Math.min(...places.map((place) => place.x))),
    y: length(Math.min(...places.map((place) => place.y))),
    says: `${kind} of ${places.length}, ${measure.replace(":", "")}`,
  };
}

/** Hundredths of a degree; a first one that lies by less before twelve stands at twelve. */
export const asWritten = (angle: number): number => Number(decimal(angle, 2)) % FULL_TURN;

export interface WrittenEntry {
  readonly entry: string;
  readonly path: Path;
}

/** What they say apart from their `own` keys must be alike, since one entry says it for all; words where it is not. */
export function unlikeAmong(
  from: Source,
  entries: readonly WrittenEntry[],
  own: readonly string[],
): string | null {
  const [first = "", ...others] = entries.map(({ path }) => saidBy(from, path, own));
  const odd = others.findIndex((said) => said !== first);
  return odd < 0
    ? null
    : `${entries[0]?.entry} and ${entries[odd + 1]?.entry} say different things of themselves`;
}

const saidBy = (from: Source, path: Path, own: readonly string[]): string => {
  const node = nodeAt(from, path);
  if (node?.kind !== "map") return "";
  return node.entries
    .filter(({ key }) => !own.includes(key))
    .map(({ key, value }) => `${key}: ${from.text.slice(value.span.start, value.span.end).trim()}`)
    .sort()
    .join("\n");
};
