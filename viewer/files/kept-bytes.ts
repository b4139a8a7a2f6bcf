// Shapes and photographs that go with a recovery copy: of a design that lies in the page alone nobody else may have them. As many as
// are kept for a copy, the smaller ones before the larger; of what is left out the names are said.

import type { DesignBinaries } from "../core-messages.ts";

/** Bytes of one copy: two of the largest shapes that are read. A browser gives a page some gigabytes, or refuses and says so. */
export const MOST_KEPT_BYTES = 100_000_000;

export interface KeptBytes {
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly leftOut: readonly string[];
}

export function keptBytes(binaries: DesignBinaries, most: number = MOST_KEPT_BYTES): KeptBytes {
  const files = new Map<string, Uint8Array>();
  const leftOut: string[] = [];
  let room = most;
  const bySize = [...binaries].toSorted(
    ([a, one], [b, other]) => sizeOf(one) - sizeOf(other) || (a < b ? -1 : 1),
  );
  for (const [path, bytes] of bySize) {
    // One that was too large to be read at all is not here to be kept.
    if (bytes === null || bytes.length > room) leftOut.push(path);
    else {
      files.set(path, bytes);
      room -= bytes.length;
    }
  }
  return { files, leftOut: leftOut.toSorted() };
}

const sizeOf = (bytes: Uint8Array | null): number => bytes?.length ?? Number.POSITIVE_INFINITY;
