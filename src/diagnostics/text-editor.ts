// Whoever makes edits of a project's texts says where and what; the text that each edit was made for is named here.

import type { Span } from "./finding.ts";
import { type TextEdit, textHash } from "./text-edit.ts";

/** Makes edits for the texts as they were read: on any other text they are refused. */
export const editorOf = (
  files: ReadonlyMap<string, string>,
): ((span: Span, text: string) => TextEdit) => {
  const hashes = new Map<string, string>();
  return (span, text) => {
    const baseHash = hashes.get(span.file) ?? textHash(files.get(span.file) ?? "");
    hashes.set(span.file, baseHash);
    return { file: span.file, baseHash, start: span.start, end: span.end, text };
  };
};
