// From a file as it is to the file as it shall be: one move of the history. Only the stretch that differs is kept, so that
// a history of many takings-over stays small.

import { type TextEdit, textHash } from "../../src/diagnostics/text-edit.ts";
import type { Move } from "../history.ts";

/** null: the file is not there. */
export function textMove(file: string, before: string | null, after: string | null): Move {
  if (before === null || after === null) return { kind: "presence", file, before, after };
  const { start, end, text } = middle(before, after);
  const back: TextEdit = {
    file,
    baseHash: textHash(after),
    start,
    end: start + text.length,
    text: before.slice(start, end),
  };
  return {
    kind: "edit",
    file,
    forth: [{ file, baseHash: textHash(before), start, end, text }],
    back: [back],
  };
}

function middle(before: string, after: string): Pick<TextEdit, "start" | "end" | "text"> {
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && before[start] === after[start]) start += 1;
  let tail = 0;
  while (tail < most - start && before.at(-1 - tail) === after.at(-1 - tail)) tail += 1;
  return { start, end: before.length - tail, text: after.slice(start, after.length - tail) };
}
