// Several changes of one file as a single edit. Each step is made for the text that the step before it left; what comes out
// replaces the shortest stretch that differs, so that it is one step of undoing and refused where the text has changed.

import { applyEdits, type TextEdit } from "../diagnostics/text-edit.ts";
import type { Edit } from "./edit.ts";
import { type Source, source } from "./source.ts";

export type Step = (from: Source) => Edit;

export const rewritten = (from: Source, steps: readonly Step[]): Edit => {
  let now = from;
  for (const step of steps) {
    const done = step(now);
    if (done.kind === "refused") return done;
    const applied = applyEdits(now.text, [done.edit]);
    if (applied.kind === "refused") return applied;
    now = source(now.file, applied.text);
  }
  return { kind: "edit", edit: difference(from, now.text) };
};

/** The step that is not needed. */
export const unchanged: Step = (now) => ({ kind: "edit", edit: difference(now, now.text) });

/** Edits that were all made for this text, as one; what changes nothing is left out. */
export const together = (from: Source, edits: readonly Edit[]): Edit => {
  const texts: TextEdit[] = [];
  for (const made of edits) {
    if (made.kind === "refused") return made;
    const { start, end, text } = made.edit;
    if (start < end || text !== "") texts.push(made.edit);
  }
  const applied = applyEdits(from.text, texts);
  return applied.kind === "refused"
    ? applied
    : { kind: "edit", edit: difference(from, applied.text) };
};

/** The edit that makes one text of another. */
export const difference = (from: Source, to: string): TextEdit => {
  const { file, text, hash } = from;
  const most = Math.min(text.length, to.length);
  let start = 0;
  while (start < most && text[start] === to[start]) start += 1;
  let same = 0;
  while (same < most - start && text[text.length - 1 - same] === to[to.length - 1 - same])
    same += 1;
  return {
    file,
    baseHash: hash,
    start,
    end: text.length - same,
    text: to.slice(start, to.length - same),
  };
};
