// The keys that one which can't stand where it does was most likely meant to be: what it is called elsewhere, then those of nearly the same
// letters. A key of quite other letters is no help, and as an edit it would be harm.

import { inWords, isNearly, nearestHint, nearestNames } from "../diagnostics/nearest.ts";

export interface NearKeys {
  /** What may be written in its place. */
  readonly meant: readonly string[];
  /** For the end of a sentence. */
  readonly hint: string;
}

export const nearKeys = (written: string, free: readonly string[]): NearKeys => {
  const elsewhere = (CALLED_ELSEWHERE.get(written.toLowerCase()) ?? []).filter((key) =>
    free.includes(key),
  );
  const letters = nearestNames(written, free).filter((key) => isNearly(written, key));
  const meant = [...new Set([...elsewhere, ...letters])];
  return { meant, hint: meant.length > 0 ? nearestHint(meant) : placeHint(written, free) };
};

/** Common words of drawing programs and of the trade for what has another name here. */
const CALLED_ELSEWHERE: ReadonlyMap<string, readonly string[]> = new Map([
  ["label", ["legend", "text"]],
  ["caption", ["legend", "text"]],
  ["color", ["colour"]],
  ["position", ["at"]],
  ["pos", ["at"]],
  ["place", ["at"]],
  ["location", ["at"]],
  ["rotation", ["turn"]],
  ["angle", ["turn"]],
  ["material", ["sheet"]],
  ["hole", ["holes"]],
]);

const PLACE_KEYS: readonly string[] = ["x", "y", "left", "right", "top", "bottom"];

const placeHint = (written: string, free: readonly string[]): string => {
  if (PLACE_KEYS.includes(written) && free.includes("at"))
    return `; it belongs into at: { ${written}: ... }`;
  const [first] = free;
  if (first === undefined) return "";
  const told = free.slice(0, MOST_TOLD);
  const more = free.length - told.length;
  return `; here can stand ${more > 0 ? `${told.join(", ")} and ${more} more` : inWords(told, "and")}`;
};

const MOST_TOLD = 12;
