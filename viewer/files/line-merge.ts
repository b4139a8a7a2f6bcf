// Two changes of one text made at the same time, by lines: joined where they touch different lines, else told apart. And
// the lines in which two texts differ. Takes texts whole and gives them whole, line ends as they are.

import { diff3Merge, diffIndices } from "node-diff3";

export interface ThreeTexts {
  /** What both began with. */
  readonly base: string;
  readonly mine: string;
  readonly theirs: string;
}

export type Merged =
  | { readonly kind: "merged"; readonly text: string }
  /** Changes of the same lines, or of lines that adjoin: joining them would be a guess. */
  | { readonly kind: "overlapping" };

export function mergeLines({ base, mine, theirs }: ThreeTexts): Merged {
  if (mine === theirs || theirs === base) return { kind: "merged", text: mine };
  if (mine === base) return { kind: "merged", text: theirs };
  const regions = diff3Merge(linesOf(mine), linesOf(base), linesOf(theirs), {
    excludeFalseConflicts: true,
  });
  const pieces = regions.map(({ ok }) => ok);
  return pieces.includes(undefined)
    ? { kind: "overlapping" }
    : { kind: "merged", text: pieces.flatMap((lines) => lines ?? []).join("") };
}

/** A stretch of lines that stands in one text and what stands in its place in the other. */
export interface Difference {
  /** Where it begins in the second text, from 1. */
  readonly line: number;
  readonly before: readonly string[];
  readonly after: readonly string[];
}

export const differences = (before: string, after: string): readonly Difference[] =>
  diffIndices(linesOf(before), linesOf(after)).map((found) => ({
    line: found.buffer2[0] + 1,
    before: found.buffer1Content.map(withoutEnd),
    after: found.buffer2Content.map(withoutEnd),
  }));

/** With their ends, so that joining them gives the text again. */
const linesOf = (text: string): string[] => text.match(/[^\n]*\n|[^\n]+$/g) ?? [];

const withoutEnd = (line: string): string => line.replace(/\r?\n$/, "");
