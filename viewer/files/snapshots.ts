// Named snapshots of a design, kept in this browser: its texts, and the shapes and photographs that they name. Made, listed,
// compared with what is on the desk, brought back as one step that undo takes back, and removed.

import { signal } from "@preact/signals";
import type { DesignBinaries, DesignTexts } from "../core-messages.ts";
import { binaries, carryOut, texts } from "../desk.ts";
import type { Move } from "../history.ts";
import { locks } from "../locks.ts";
import { forget, keep, kept } from "./browser-keep.ts";
import { keepTrouble } from "./keep-trouble.ts";
import "./file-steps.ts";
import type { BroughtFile, FilesBack } from "./snapshot-files-back.ts";
import type { HeldContents, SnapshotFiles } from "./snapshot-plan.ts";
import type { Store } from "./store.ts";
import { refuse, store, tell } from "./stored-state.ts";
import { textMove } from "./text-move.ts";

export interface Snapshot extends SnapshotFiles {
  readonly key: string;
  readonly design: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly when: number;
  readonly texts: DesignTexts;
}

/** Of the open design, newest first. */
export const snapshots = signal<readonly Snapshot[]>([]);

export async function findSnapshots(): Promise<void> {
  const design = store.value?.id;
  // A browser that keeps nothing has none; keeping one says why.
  const all = await allSnapshots().catch(() => []);
  snapshots.value = all
    .filter((snapshot) => snapshot.design === design)
    .toSorted((a, b) => b.when - a.when);
}

const allSnapshots = async (): Promise<readonly Snapshot[]> =>
  (await kept("snapshots")).flatMap(snapshotOf);

export async function takeSnapshot(name: string): Promise<void> {
  const design = store.value?.id;
  if (design === undefined) return;
  if (!canKeep()) {
    refuse(`"${name}" was not kept: ${FROM_AFAR}`);
    return;
  }
  // As it is now: keeping the files takes its time.
  const now = { when: Date.now(), texts: texts.value };
  const held = binaries.value;
  try {
    await alone(async () => {
      const { files, leftOut } = await keptFiles(held);
      const key = `snapshot ${crypto.randomUUID()}`;
      await keep("snapshots", { key, design, name, ...now, files, leftOut });
      tell(`Kept as "${name}"${leftOut.length === 0 ? "" : `, without ${leftOut.join(", ")}`}`);
    });
  } catch (reason) {
    refuse(`"${name}" was not kept: ${keepTrouble(reason)}`);
  }
  await findSnapshots();
}

/** A browser numbers keys and tells contents apart for pages that come over https or from its own machine, and for no others. */
const canKeep = (): boolean => crypto.randomUUID !== undefined && crypto.subtle !== undefined;

const FROM_AFAR =
  "this page came over plain http from another machine, and a browser keeps no snapshots for such a page. Over https, or on the machine that serves it, it does.";

/** Files before the snapshot: none speaks of what is not there. */
const keptFiles = async (held: DesignBinaries): Promise<SnapshotFiles> => {
  if (held.size === 0) return { files: new Map(), leftOut: [] };
  const { keepContents } = await import("./snapshot-bytes.ts");
  return keepContents(held, heldBy(await allSnapshots()));
};

const heldBy = (all: readonly Snapshot[]): readonly HeldContents[] =>
  all.flatMap(({ files }) => (files === null ? [] : [files]));

/** Texts, and files that are not there now beside them, as one step. Files that the snapshot does not have stay as they are. */
export async function bringBack(snapshot: Snapshot): Promise<void> {
  const { name, texts: then } = snapshot;
  if (locks.value.design !== null) {
    refuse(`"${name}" was not brought back: ${locks.value.design}.`);
    return;
  }
  const into = store.value;
  const { back, stays } = await broughtFiles(snapshot, into);
  if (store.value !== into) {
    refuse(`"${name}" was not brought back: another design was opened meanwhile.`);
    return;
  }
  const differing = [...then].filter(([file, text]) => texts.value.get(file) !== text);
  const locked = differing.map(([file]) => file).filter((file) => locks.value.files.has(file));
  const moves = differing
    .filter(([file]) => !locked.includes(file))
    .map(([file, text]) => textMove(file, texts.value.get(file) ?? null, text));
  const files = back.map(broughtMove);
  carryOut([...moves, ...files], `bring back "${name}"`);
  const brought = [...moves, ...files].map(({ file }) => file);
  const left = [
    ...(locked.length === 0 ? [] : [`left as they are, read-only: ${locked.join(", ")}`]),
    ...stays,
  ];
  const what =
    brought.length === 0
      ? `Nothing to bring back from "${name}"`
      : `Brought back "${name}": ${brought.join(", ")}`;
  tell([what, ...left].join("; "));
}

const broughtMove = ({ path, content, isInPage }: BroughtFile): Move => ({
  kind: "bytes",
  file: path,
  before: null,
  after: content,
  isInPage,
});

/** Loaded where there is something to bring back or to miss. */
const broughtFiles = async (snapshot: Snapshot, into: Store | null): Promise<FilesBack> => {
  const { files, leftOut } = snapshot;
  if ((files?.size ?? 0) + leftOut.length === 0) return { back: [], stays: [] };
  const { bringFilesBack } = await import("./snapshot-files-back.ts");
  return bringFilesBack(snapshot, into);
};

export async function removeSnapshot({ key, name }: Snapshot): Promise<void> {
  try {
    await alone(async () => {
      await forget("snapshots", key);
      const { sweepContents } = await import("./snapshot-bytes.ts");
      await sweepContents(heldBy(await allSnapshots()));
    });
  } catch (reason) {
    refuse(`"${name}" was not removed: ${keepTrouble(reason)}`);
  }
  await findSnapshots();
}

/**
 * One window at a time: none takes out a content that another is about to count on. Browsers that are too old for locks do without;
 * on plain http from afar there are none either, and nothing is kept.
 */
const alone = async (work: () => Promise<void>): Promise<void> => {
  if (navigator.locks === undefined) await work();
  else await navigator.locks.request("consolewright snapshots", work);
};

/** Records of this page's own making; the first version kept no files and said nothing of them. */
const snapshotOf = (value: unknown): readonly Snapshot[] =>
  isSnapshot(value) ? [{ ...value, files: value.files ?? null, leftOut: value.leftOut ?? [] }] : [];

type FirstSnapshot = Omit<Snapshot, keyof SnapshotFiles> & Partial<SnapshotFiles>;

const isSnapshot = (value: unknown): value is FirstSnapshot =>
  typeof value === "object" &&
  value !== null &&
  "texts" in value &&
  value.texts instanceof Map &&
  "name" in value &&
  "design" in value &&
  "when" in value;
