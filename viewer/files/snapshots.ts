// Named snapshots of a design's texts, kept in this browser: made, listed, compared with what is on the desk, brought
// back as one step that undo takes back, and removed.

import { signal } from "@preact/signals";
import type { DesignTexts } from "../core-messages.ts";
import { carryOut, texts } from "../desk.ts";
import { locks } from "../locks.ts";
import { forget, keep, kept } from "./browser-keep.ts";
import { refuse, store, tell } from "./stored-state.ts";
import { textMove } from "./text-move.ts";

export interface Snapshot {
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
  const records: readonly unknown[] = await kept("snapshots").catch(() => []);
  snapshots.value = records
    .filter(isSnapshot)
    .filter((snapshot) => snapshot.design === design)
    .toSorted((a, b) => b.when - a.when);
}

export async function takeSnapshot(name: string): Promise<void> {
  const design = store.value?.id;
  if (design === undefined) return;
  const when = Date.now();
  const snapshot: Snapshot = {
    key: `snapshot ${crypto.randomUUID()}`,
    design,
    name,
    when,
    texts: texts.value,
  };
  try {
    await keep("snapshots", snapshot);
    tell(`Kept as "${name}"`);
  } catch (reason) {
    refuse(`"${name}" was not kept: ${reason instanceof Error ? reason.message : reason}`);
  }
  await findSnapshots();
}

/** Files that the snapshot does not have stay as they are. */
export function bringBack({ name, texts: then }: Snapshot): void {
  if (locks.value.design !== null) {
    refuse(`"${name}" was not brought back: ${locks.value.design}.`);
    return;
  }
  const differing = [...then].filter(([file, text]) => texts.value.get(file) !== text);
  const locked = differing.map(([file]) => file).filter((file) => locks.value.files.has(file));
  const moves = differing
    .filter(([file]) => !locked.includes(file))
    .map(([file, text]) => textMove(file, texts.value.get(file) ?? null, text));
  carryOut(moves, `bring back "${name}"`);
  const left = locked.length === 0 ? "" : `; left as they are, read-only: ${locked.join(", ")}`;
  tell(
    moves.length === 0
      ? `Nothing to bring back from "${name}"${left}`
      : `Brought back "${name}": ${moves.map(({ file }) => file).join(", ")}${left}`,
  );
}

export async function removeSnapshot({ key }: Snapshot): Promise<void> {
  await forget("snapshots", key).catch(() => undefined);
  await findSnapshots();
}

const isSnapshot = (value: unknown): value is Snapshot =>
  typeof value === "object" &&
  value !== null &&
  "texts" in value &&
  value.texts instanceof Map &&
  "name" in value &&
  "design" in value &&
  "when" in value;
