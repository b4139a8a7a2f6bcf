// What can't be written, by file, and why; edits of it are refused.

import { signal } from "@preact/signals";

export interface Locks {
  /** Of the whole design; null: it may be written. */
  readonly design: string | null;
  readonly files: ReadonlyMap<string, string>;
}

export const locks = signal<Locks>({ design: null, files: new Map() });

/** Why one of the files can't be written; null: all can. */
export const lockOn = (files: readonly string[]): string | null => {
  const { design, files: locked } = locks.value;
  return design ?? files.flatMap((file) => locked.get(file) ?? [])[0] ?? null;
};
