// Opening a design: the one that the server has, a folder to work in, files that were chosen or dropped, or an example
// that was built in; the demo, where nothing else is asked for. Whatever is kept of it in the browser is looked for then.

import { choosePanel, progress } from "../desk.ts";
import { holdsDesign } from "../first-files.ts";
import { beginGuideOnce, openStart } from "../start/start-state.ts";
import { exampleNames, exampleTexts, loadExamples } from "./examples.ts";
import { isServed } from "./is-served.ts";
import { leaveFor } from "./leaving.ts";
import { looseStore } from "./loose-store.ts";
import { namedBytes } from "./named-bytes.ts";
import { pickFolder } from "./pick-folder.ts";
import { findRecovery, keepNow, leftOver, offered } from "./recovery.ts";
import { openStore } from "./saving.ts";
import { asSentence } from "./sentence.ts";
import { findSnapshots } from "./snapshots.ts";
import type { Store } from "./store.ts";
import { refuse, store, stored, tell } from "./stored-state.ts";

/** What is shown to somebody who has asked for nothing yet. */
const DEMO = "tug-trainer";

/** Of an example that takes long to read: the panel that is shown first, read before the others. */
const FIRST_PANELS: Readonly<Record<string, FirstPanel>> = {
  [DEMO]: { name: "winch", file: "panels/winch.yaml" },
};

interface FirstPanel {
  readonly name: string;
  readonly file: string;
}

/** What the page begins with: the design that it is served with, else what was left unsaved, else the demo. */
export const openFirst = (): Promise<void> => (isServed() ? openServed() : openBeginning());

async function openBeginning(): Promise<void> {
  progress.value = { kind: "reading", what: DEMO };
  const [left] = await Promise.all([leftOver(), loadExamples()]);
  // Somebody was quicker, or has given it up.
  if (openings > 0) return;
  if (progress.value.kind !== "reading" || !exampleNames.value.includes(DEMO)) begin();
  else if (left === null || exampleNames.value.includes(left.name))
    await openDemo(left?.name ?? DEMO);
  else if (left.kind === "texts") await open(left.store);
  else begin();
}

/** Nothing is opened: the choice. */
function begin(): void {
  if (progress.value.kind === "reading") progress.value = { kind: "empty" };
  openStart();
}

async function openDemo(name: string): Promise<void> {
  await openExample(name);
  if (offered.value.length === 0) beginGuideOnce();
}

async function openServed(): Promise<void> {
  const { serverStore } = await import("./server-store.ts");
  const served = await serverStore();
  if (served.kind === "store") await open(served.store);
  else progress.value = { kind: "refused", why: asSentence(served.why) };
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
    if (folder === null) return;
    const { folderStore } = await import("./folder-store.ts");
    await open(folderStore(folder));
  };
};

/** Whether it was opened: the person may stay with what is not saved. So with all that follow. */
export const openExample = (name: string): Promise<boolean> =>
  open(looseStore(name, exampleTexts(name)), FIRST_PANELS[name] ?? null);

/** A text that was made in the page: nothing of it is stored yet. */
export async function openMade(file: string, text: string): Promise<boolean> {
  const isOpened = await open(looseStore(file, new Map([[file, text]])));
  if (isOpened) stored.value = new Map();
  return isOpened;
}

export interface PathedFile {
  /** From the folder that was chosen or dropped; a loose file's name. */
  readonly path: string;
  readonly file: File;
}

/** Files that the user chose or dropped, with the shapes and photographs that they name. What is neither is left aside. */
export async function openPathed(files: readonly PathedFile[]): Promise<void> {
  const designs = files.filter(({ path }) => /\.ya?ml$/i.test(path));
  if (designs.length === 0) {
    refuseFiles("None of these is a design file (.yaml).");
    return;
  }
  const texts = await Promise.all(
    designs.map(async ({ path, file }): Promise<[string, string]> => [path, await file.text()]),
  );
  // Where nothing is open the reader says what is wrong with it.
  if (store.value !== null && !holdsDesign(new Map(texts))) {
    const names = texts.map(([path]) => path).join(", ");
    refuseFiles(`Not opened: ${names} is neither a panel nor a console, by its "kind".`);
    return;
  }
  // The reader of texts, which the page's first picture does without: the worker has its own.
  const { binariesOf } = await import("../../src/design/includes.ts");
  const named = new Set(texts.flatMap(([path, text]) => binariesOf(path, text)));
  const others = await namedBytes(files.filter(({ path }) => named.has(path)));
  const what = designs.length === 1 ? designs[0]!.path : `${designs.length} files`;
  await open(looseStore(what, new Map(texts), others));
}

/** What is open stays open, and why nothing else is. */
function refuseFiles(why: string): void {
  const open = store.value;
  if (open === null) progress.value = { kind: "refused", why };
  else refuse(`${why} ${open.name} stays open.`);
}

/** How many designs were asked for since the page began. */
let openings = 0;

async function open(next: Store, first: FirstPanel | null = null): Promise<boolean> {
  openings += 1;
  const leave = await leaveFor(next.name);
  if (leave.kind === "stay") return false;
  await keepNow();
  const why = await openStore(next, first?.file ?? null);
  if (why !== null) {
    progress.value = { kind: "refused", why: asSentence(why) };
    return false;
  }
  if (leave.news !== null) tell(leave.news);
  if (first !== null) choosePanel(first.name);
  await Promise.all([findRecovery(), findSnapshots()]);
  return true;
}
