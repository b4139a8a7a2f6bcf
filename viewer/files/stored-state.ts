// What the page knows of where its design is kept: the store, the texts that stand there, and what waits for a decision.
// Signals only; saving, following and recovering work on them.

import { computed, type ReadonlySignal, signal } from "@preact/signals";
import type { DesignTexts } from "../core-messages.ts";
import { texts } from "../desk.ts";
import type { Conflict } from "./reconcile.ts";
import type { Store } from "./store.ts";

export const store = signal<Store | null>(null);
export const stored = signal<DesignTexts>(new Map());
export const conflicts = signal<readonly Conflict[]>([]);
/** Why the store does not answer; null: it does. */
export const lostStore = signal<string | null>(null);
/** Files that somebody else has deleted since the design was opened. */
export const deletedOutside = signal<ReadonlySet<string>>(new Set());
/** Files that stand there and can't be read now. */
export const unreadNow = signal<ReadonlySet<string>>(new Set());
/** Files of the store that could not be read, in words. */
export const storeTroubles = signal<readonly string[]>([]);
/** What was last done or refused, for the person. */
export const fileNews = signal<FileNews | null>(null);

export interface FileNews {
  readonly kind: "done" | "refused";
  readonly words: string;
}

/** Files whose text is not the one that is stored. */
export const unsaved: ReadonlySignal<readonly string[]> = computed(() =>
  [...texts.value]
    .filter(([file, text]) => stored.value.get(file) !== text)
    .map(([file]) => file)
    .toSorted(),
);

/** Files that were deleted outside and that the page has no text of now. */
export const gone: ReadonlySignal<readonly string[]> = computed(() =>
  [...deletedOutside.value].filter((file) => !texts.value.has(file)).toSorted(),
);

export const tell = (words: string): void => {
  fileNews.value = { kind: "done", words };
};

export const refuse = (words: string): void => {
  fileNews.value = { kind: "refused", words };
};
