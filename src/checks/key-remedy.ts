// A remedy that gives a key of the design's text a value, whether the key is there yet or not. Comments and order stay.

import { type Path, setKey } from "../design/edit.ts";
import { source } from "../design/source.ts";
import type { Remedy } from "../diagnostics/finding.ts";
import type { PanelFacts } from "./rule.ts";

export interface KeyValue {
  readonly file: string;
  /** From the root of the file to the group of keys. */
  readonly path: Path;
  readonly key: string;
  readonly value: string;
}

/** Advice without an edit where the caller has no texts. */
export const keyRemedy = (facts: Pick<PanelFacts, "texts">, wanted: KeyValue): Remedy => {
  const title = `${wanted.key}: ${wanted.value}`;
  const text = facts.texts?.get(wanted.file);
  if (text === undefined) return { title, edits: [] };
  const { key, value } = wanted;
  const set = setKey(source(wanted.file, text), wanted.path, { key, value });
  return { title, edits: set.kind === "edit" ? [set.edit] : [] };
};
