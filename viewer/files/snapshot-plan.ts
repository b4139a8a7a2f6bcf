// Which shapes and photographs a snapshot keeps: each content once for all snapshots, however many of them and however many files
// have it, and all contents together within a limit. Pure; the smaller ones come first, so that one large one leaves the others in.

import type { Content } from "../history.ts";

/** Bytes of all contents: some photographs and shapes of several designs. A browser gives a page some gigabytes, or refuses. */
export const MOST_SNAPSHOT_BYTES = 250_000_000;

/** By path: what a snapshot has beside its texts. */
export type HeldContents = ReadonlyMap<string, Content>;

export interface SnapshotFiles {
  /** Shapes and photographs; null where an earlier version of the page kept the texts alone. */
  readonly files: HeldContents | null;
  /** Those that found no room. */
  readonly leftOut: readonly string[];
}

export interface ContentPlan {
  readonly files: HeldContents;
  /** Contents that are not there yet. */
  readonly added: readonly string[];
  /** Paths of what finds no room. */
  readonly leftOut: readonly string[];
}

export function contentPlan(
  wanted: HeldContents,
  others: readonly HeldContents[],
  most: number = MOST_SNAPSHOT_BYTES,
): ContentPlan {
  const there = new Map(
    others.flatMap((held) => [...held.values()].map(({ hash, size }) => [hash, size])),
  );
  let room = most - [...there.values()].reduce((sum, size) => sum + size, 0);
  const files = new Map<string, Content>();
  const added: string[] = [];
  const leftOut: string[] = [];
  const bySize = [...wanted].toSorted(
    ([a, one], [b, other]) => one.size - other.size || (a < b ? -1 : 1),
  );
  for (const [path, content] of bySize) {
    const isNew = !there.has(content.hash);
    if (isNew && content.size > room) {
      leftOut.push(path);
      continue;
    }
    files.set(path, content);
    if (!isNew) continue;
    there.set(content.hash, content.size);
    added.push(content.hash);
    room -= content.size;
  }
  return { files, added, leftOut: leftOut.toSorted() };
}
