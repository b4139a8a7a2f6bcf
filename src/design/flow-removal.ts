// An entry taken out of a list or map that is written in brackets: with its comma, and without losing a comment that stands
// between it and its neighbour.

import type { TextEdit } from "../diagnostics/text-edit.ts";
import type { Source } from "./source.ts";

/** Offsets in the text, the end behind its content. */
export interface FlowEntry {
  readonly start: number;
  readonly end: number;
}

/** There are two entries at least, one of them at `index`. */
export const flowRemoval = (
  { file, hash, text }: Source,
  entries: readonly FlowEntry[],
  index: number,
): TextEdit => {
  const { start, end } = entries[index]!;
  const [before, next] = [entries[index - 1], entries[index + 1]];
  const edit = { file, baseHash: hash };
  return next === undefined
    ? { ...edit, start: before!.end, end, text: comments(text.slice(before!.end, start)) }
    : { ...edit, start, end: next.start, text: comments(text.slice(end, next.start)) };
};

/** What stands between two entries is a comma, blanks and comments: all but the comma, where there is a comment to keep. */
const comments = (between: string): string => {
  if (!between.includes("#")) return "";
  const comma = between.split("\n").reduce<{ readonly at: number; readonly found: number }>(
    ({ at, found }, line) => {
      const inLine = line.split("#")[0]?.indexOf(",") ?? -1;
      return { at: at + line.length + 1, found: found < 0 && inLine >= 0 ? at + inLine : found };
    },
    { at: 0, found: -1 },
  ).found;
  return comma < 0 ? between : between.slice(0, comma) + between.slice(comma + 1);
};
