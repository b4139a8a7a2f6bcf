// What can't be written, by file, and why; edits of it are refused.

import { effect, type Signal, signal } from "@preact/signals";

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

/** What was refused for a lock is no news once it is gone: these words are emptied then. */
export function emptiedWithLock(said: Signal<string>): void {
  let before = reasons(locks.peek());
  effect(() => {
    const now = reasons(locks.value);
    const lifted = before.filter((why) => !now.includes(why));
    before = now;
    if (lifted.some((why) => said.peek().includes(why))) said.value = "";
  });
}

const reasons = ({ design, files }: Locks): readonly string[] => [
  ...(design === null ? [] : [design]),
  ...files.values(),
];
