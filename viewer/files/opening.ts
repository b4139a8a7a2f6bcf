// Opening a design that has no store of its own: an example that was built in, or files that were chosen or dropped.

import { signal } from "@preact/signals";
import { openDesign, progress } from "../desk.ts";

type Examples = Readonly<Record<string, Readonly<Record<string, string>>>>;

export const exampleNames = signal<readonly string[]>([]);

let examples: Examples = {};

export async function openFirstExample(): Promise<void> {
  const answer = await fetch("examples.json");
  if (!answer.ok) return;
  examples = await answer.json();
  exampleNames.value = Object.keys(examples).sort();
  const first = exampleNames.value[0];
  if (first !== undefined && progress.value.kind === "empty") await openExample(first);
}

export async function openExample(name: string): Promise<void> {
  await openTexts(name, new Map(Object.entries(examples[name] ?? {})));
}

export interface PathedFile {
  /** From the folder that was chosen or dropped; a loose file's name. */
  readonly path: string;
  readonly file: File;
}

/** Files that the user chose or dropped. What is no design file is left aside. */
export async function openPathed(files: readonly PathedFile[]): Promise<void> {
  const designs = files.filter(({ path }) => /\.ya?ml$/i.test(path));
  if (designs.length === 0) {
    progress.value = {
      kind: "refused",
      why: "None of these is a design file (.yaml).",
    };
    return;
  }
  const texts = await Promise.all(
    designs.map(async ({ path, file }): Promise<[string, string]> => [path, await file.text()]),
  );
  await openTexts(
    designs.length === 1 ? designs[0]!.path : `${designs.length} files`,
    new Map(texts),
  );
}

const openTexts = (what: string, texts: ReadonlyMap<string, string>): Promise<void> =>
  openDesign(what, { texts, binaries: new Map() });
