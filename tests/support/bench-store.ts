// A store of a test's own: files by path, what is locked of them and why, and a hand on the watch.

import type { Following, SaveOutcome, Store } from "../../viewer/files/store.ts";

export interface BenchStore {
  readonly store: Store;
  /** As they lie in it; changing them is a change outside. */
  readonly files: Map<string, string>;
  /** What can't be written, and why. */
  readonly locked: Map<string, string>;
  /** What stands there and can't be read, and why. */
  readonly unread: Map<string, string>;
  /** Whoever follows the store is told that something has changed. */
  readonly tell: () => void;
}

export function benchStore(): BenchStore {
  const files = new Map<string, string>();
  const locked = new Map<string, string>();
  const unread = new Map<string, string>();
  let following: Following | null = null;
  const store: Store = {
    id: "bench",
    name: "bench",
    saving: "Save",
    load: async () => ({
      kind: "loaded",
      design: {
        texts: new Map([...files].filter(([file]) => !unread.has(file))),
        unread: [...unread.keys()],
        binaries: new Map(),
        locked: new Map(locked),
        isReadOnly: false,
        troubles: [...unread.values()],
      },
    }),
    save: async (changes): Promise<SaveOutcome> => {
      for (const { file } of changes) {
        const why = locked.get(file) ?? unread.get(file);
        if (why !== undefined) return { kind: "refused", why };
      }
      for (const { file, after } of changes) files.set(file, after);
      return { kind: "saved", how: "Saved" };
    },
    keepPicture: async () => ({ kind: "kept" }),
    follow: (by) => {
      following = by;
      return () => undefined;
    },
  };
  return { store, files, locked, unread, tell: () => following?.changed() };
}
