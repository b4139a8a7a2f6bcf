// Watches the files of a design, and calls when one has changed, come or gone. The system tells of most changes at once;
// what it does not tell of (network disks, folders made later) is found by looking, every two seconds.

import { type FSWatcher, realpathSync, type Stats, statSync, watch } from "node:fs";
import { dirname, join } from "node:path";

export interface Watch {
  /** Watches these paths from now on. */
  readonly follow: (paths: Iterable<string>) => void;
  readonly close: () => void;
}

/** Several events come of one save. */
const SETTLE_MS = 80;
const LOOK_MS = 2000;

export const watchDesign = (root: string, changed: () => void): Watch => {
  let places: readonly string[] = [];
  let seen = "";
  let settling: NodeJS.Timeout | undefined;
  const watchers = new Map<string, FSWatcher>();
  const look = (): void => {
    const now = fingerprint(places);
    if (now === seen) return;
    seen = now;
    changed();
  };
  const soon = (): void => {
    clearTimeout(settling);
    settling = setTimeout(look, SETTLE_MS);
  };
  const looking = setInterval(look, LOOK_MS);
  return {
    follow: (paths) => {
      places = [...paths].map((path) => join(root, path)).toSorted();
      seen = fingerprint(places);
      for (const folder of new Set(places.map(dirname)))
        if (!watchers.has(folder)) {
          const watcher = folderWatcher(folder, soon);
          if (watcher !== null) watchers.set(folder, watcher);
        }
    },
    close: () => {
      clearInterval(looking);
      clearTimeout(settling);
      for (const watcher of watchers.values()) watcher.close();
    },
  };
};

/** null where the system watches no more folders, or none of this kind: looking does it then. */
const folderWatcher = (folder: string, soon: () => void): FSWatcher | null => {
  try {
    const watcher = watch(folder, soon);
    watcher.on("error", () => watcher.close());
    return watcher;
  } catch {
    return null;
  }
};

/**
 * True place, size, time, number and permissions of each file, as far as it is there, and the permissions of its folder: a folder
 * that is closed to writing keeps its files from being saved, and a link in a file's place may lead to that same file elsewhere.
 */
const fingerprint = (places: readonly string[]): string =>
  [
    ...places.map((place) =>
      stateOf(place, ({ size, mtimeMs, ino, mode }) => [size, mtimeMs, ino, mode]),
    ),
    ...[...new Set(places.map(dirname))].map((folder) => stateOf(folder, ({ mode }) => [mode])),
  ].join("\n");

const stateOf = (place: string, of: (stats: Stats) => readonly number[]): string => {
  try {
    return `${place} ${realpathSync.native(place)} ${of(statSync(place)).join(" ")}`;
  } catch {
    return `${place} none`;
  }
};
