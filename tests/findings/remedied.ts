// A design's texts with a remedy applied, and what is compared of its findings before and after.

import type { Finding, Remedy } from "../../src/diagnostics/finding.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import type { Texts } from "./example.ts";

export const remedied = (texts: Texts, remedy: Remedy): Texts => {
  const next = new Map(texts);
  for (const file of new Set(remedy.edits.map((edit) => edit.file))) {
    const edits = remedy.edits.filter((edit) => edit.file === file);
    const result = applyEdits(texts.get(file) ?? "", edits);
    if (result.kind === "refused") throw new Error(result.why);
    next.set(file, result.text);
  }
  return next;
};

export const isSame = (one: Finding, other: Finding): boolean =>
  one.code === other.code && one.subjects.join() === other.subjects.join();

export const faultsOf = (findings: readonly Finding[]): readonly string[] =>
  findings
    .filter(({ severity }) => severity === "fault")
    .map(({ code, subjects }) => `${code} ${subjects.join()}`);
