// Opening a design: the one that the server has, a folder to work in, files that were chosen or dropped, or an example
// that was built in. Whatever is kept of it in the browser is looked for then.

import { signal } from "@preact/signals";
import { progress } from "../desk.ts";
import { folderStore, pickFolder } from "./folder-store.ts";
import { looseStore } from "./loose-store.ts";
import { findRecovery, keepNow } from "./recovery.ts";
import { openStore } from "./saving.ts";
import { isServed, serverStore } from "./server-store.ts";
import { findSnapshots } from "./snapshots.ts";
import type { Store } from "./store.ts";

type Examples = Readonly<Record<string, Readonly<Record<string, string>>>>;

export const exampleNames = signal<readonly string[]>([]);

let examples: Examples = {};

/** What the page begins with. */
export const openFirst = (): Promise<void> => (isServed() ? openServed() : openFirstExample());

async function openServed(): Promise<void> {
  const served = await serverStore();
  if (served.kind === "store") await open(served.store);
  else progress.value = { kind: "refused", why: served.why };
  // An address with another key in the same window: nothing is loaded anew by itself.
  window.addEventListener("hashchange", () => {
    if (progress.value.kind === "refused") location.reload();
  });
}

/** The person chooses the folder; null where the browser has no such choice. */
export const openFolder = (): (() => Promise<void>) | null => {
  const pick = pickFolder();
  if (pick === null) return null;
  return async () => {
    // Choosing none is no mistake.
    const folder = await pick({ mode: "readwrite" }).catch(() => null);
    if (folder !== null) await open(folderStore(folder));
  };
};

async function openFirstExample(): Promise<void> {
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
  open(looseStore(what, texts));

async function open(store: Store): Promise<void> {
  await keepNow();
  const why = await openStore(store);
  if (why !== null) {
    progress.value = { kind: "refused", why };
    return;
  }
  await Promise.all([findRecovery(), findSnapshots()]);
}
