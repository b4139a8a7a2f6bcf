// Applies the remedies of faults to a design's texts, one after another, in memory. A remedy stays only if its finding
// is gone and faults are fewer than before; queries are a person's to decide and are left alone.

import type { Finding, Remedy } from "../diagnostics/finding.ts";
import { applyEdits } from "../diagnostics/text-edit.ts";

export type Texts = ReadonlyMap<string, string>;

export interface Remedied {
  readonly files: Texts;
  readonly applied: readonly { readonly code: string; readonly title: string }[];
}

/** A design with more faults than this is not mended by a program; each try judges the design again. */
const MOST_TRIES = 200;

export const applyRemedies = (
  files: Texts,
  judge: (files: Texts) => readonly Finding[],
): Remedied => {
  let now: Judged = { files, faults: faultsOf(judge(files)) };
  const applied: { code: string; title: string }[] = [];
  const tried = new Set<string>();
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const next = untried(now.faults, tried);
    if (next === null) break;
    const texts = edited(now.files, next.remedy);
    if (texts === null) continue;
    const then: Judged = { files: texts, faults: faultsOf(judge(texts)) };
    if (!isBetter(now, then, next.fault)) continue;
    now = then;
    applied.push({ code: next.fault.code, title: next.remedy.title });
  }
  return { files: now.files, applied };
};

interface Judged {
  readonly files: Texts;
  readonly faults: readonly Finding[];
}

const faultsOf = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ severity }) => severity === "fault");

const untried = (
  faults: readonly Finding[],
  tried: Set<string>,
): { readonly fault: Finding; readonly remedy: Remedy } | null => {
  for (const fault of faults)
    for (const remedy of fault.remedies) {
      const key = JSON.stringify([fault.code, fault.subjects, remedy.edits]);
      if (remedy.edits.length === 0 || tried.has(key)) continue;
      tried.add(key);
      return { fault, remedy };
    }
  return null;
};

/**
 * The fault is gone and there are fewer than before. Those that were held back for the same cause are counted: one of
 * them may come to light when the cause is mended, and is no step back.
 */
const isBetter = (now: Judged, then: Judged, mended: Finding): boolean =>
  alike(then.faults, mended) < alike(now.faults, mended) && weight(then) < weight(now);

const alike = (faults: readonly Finding[], wanted: Finding): number =>
  faults.filter((fault) => keyOf(fault) === keyOf(wanted)).length;

const keyOf = ({ code, panel, subjects }: Finding): string =>
  JSON.stringify([code, panel, subjects]);

const weight = ({ faults }: Judged): number =>
  faults.reduce((sum, { suppressed }) => sum + 1 + suppressed, 0);

/** null where an edit was made for another text. */
const edited = (texts: Texts, remedy: Remedy): Texts | null => {
  const files = new Map(texts);
  for (const file of new Set(remedy.edits.map((edit) => edit.file))) {
    const outcome = applyEdits(
      files.get(file) ?? "",
      remedy.edits.filter((edit) => edit.file === file),
    );
    if (outcome.kind === "refused") return null;
    files.set(file, outcome.text);
  }
  return files;
};
