// An edit handed to the desk, and what came of it in words under the sheet: done, not yet, or refused.

import type { Edit } from "../../src/design/edit.ts";
import type { TextEdit } from "../../src/diagnostics/text-edit.ts";
import { edit, texts } from "../desk.ts";
import { say } from "./board.ts";

/** What is said while the person is asked. */
export const ASKED = "Not done yet: the file stands more than once. Choose what shall change.";

/** As one step, called `what`; `words` are what is said once it is done. False where nothing has changed. */
export function take(edits: readonly TextEdit[], what: string, words: string = what): boolean {
  const before = texts.value;
  const outcome = edit(edits, what);
  switch (outcome.kind) {
    case "done":
      say(sentence(words));
      // An edit to what is written already makes no step: whoever picks what a step has made would pick by the one before.
      return texts.value !== before;
    case "asked":
      say(ASKED);
      return false;
    case "refused":
      say(`Not done: ${outcome.why}.`);
      return false;
  }
}

export function takeEdit(made: Edit, what: string, words: string = what): boolean {
  if (made.kind === "refused") {
    say(`Not done: ${made.why}.`);
    return false;
  }
  return take([made.edit], what, words);
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
