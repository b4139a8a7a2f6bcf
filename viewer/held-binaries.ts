// Shapes and photographs on the desk: as they were stored, and over them what was put beside the texts and that no stored text has
// named yet. Each call that may change them says whether it has.

import { type ReadonlySignal, signal } from "@preact/signals";
import type { DesignBinaries } from "./core-messages.ts";
import { isSameBinaries } from "./same-binaries.ts";

let stored: DesignBinaries = new Map();
let added: DesignBinaries = new Map();
const held = signal<DesignBinaries>(stored);

/** Another map where anything has changed, else the same one. */
export const binaries: ReadonlySignal<DesignBinaries> = held;

/** By its path from the root; null: too large to be read; undefined: not there. */
export const binaryAt = (path: string): Uint8Array | null | undefined => held.value.get(path);

/** Of another design: nothing is left of the one before. */
export function beginWith(next: DesignBinaries): void {
  stored = next;
  added = new Map();
  held.value = next;
}

export function putBeside(path: string, bytes: Uint8Array): boolean {
  added = new Map([...added, [path, bytes]]);
  return hasChanged();
}

/** False where it was not put beside the texts: what is stored stays. */
export function takeAway(path: string): boolean {
  if (!added.has(path)) return false;
  added = new Map([...added].filter(([each]) => each !== path));
  return hasChanged();
}

export function takeStored(next: DesignBinaries): boolean {
  stored = next;
  // What the store has by now is as the store has it: else a newer picture would never be seen.
  added = new Map([...added].filter(([path]) => !next.has(path)));
  return hasChanged();
}

function hasChanged(): boolean {
  const now = new Map([...stored, ...added]);
  if (isSameBinaries(held.value, now)) return false;
  held.value = now;
  return true;
}
