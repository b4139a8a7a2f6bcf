// Recovery copies: while there are edits that are not saved, texts and history go into the browser's keep, at most two
// seconds behind. A copy whose window is gone is offered when its design is opened again.

import { effect, signal } from "@preact/signals";
import type { DesignTexts } from "../core-messages.ts";
import { history, settleAll, texts } from "../desk.ts";
import type { History } from "../history.ts";
import { forget, keep, kept } from "./browser-keep.ts";
import { looseStore } from "./loose-store.ts";
import { restoreDesk } from "./saving.ts";
import type { Store } from "./store.ts";
import { store, stored, unsaved } from "./stored-state.ts";

export interface RecoveryCopy {
  /** The window that keeps it and which of its openings: two windows on one design keep one each. */
  readonly key: string;
  readonly window: string;
  readonly design: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly when: number;
  readonly stored: DesignTexts;
  readonly texts: DesignTexts;
  readonly history: History;
}

/** Copies of the open design that no window holds any more, newest first. */
export const offered = signal<readonly RecoveryCopy[]>([]);
/** Why no copies are kept; null: they are. */
export const recoveryTrouble = signal<string | null>(null);

const EVERY_MS = 2000;
const thisWindow = `window ${crypto.randomUUID()}`;
let opening = 0;

const copyKey = (): string => `${thisWindow} ${opening}`;

/** Begins to keep copies of whatever is on the desk. */
export function keepRecovery(): void {
  // Held as long as the window lives; whoever finds it free knows that its copy is left over. Not on plain http from afar.
  void navigator.locks?.request(thisWindow, () => new Promise(() => undefined));
  let isDue = false;
  const soon = (): void => {
    if (isDue) return;
    isDue = true;
    setTimeout(() => {
      isDue = false;
      void keepNow();
    }, EVERY_MS);
  };
  effect(() => {
    if (texts.value !== stored.value) soon();
  });
  // The last moment at which a page may still write.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void keepNow();
  });
}

/** For the design that was just opened; what this window has kept of an earlier opening is left over too. */
export async function findRecovery(): Promise<void> {
  opening += 1;
  const design = store.value?.id;
  try {
    const [records, held] = await Promise.all([kept("recovery"), heldWindows()]);
    offered.value = records
      .filter(isCopy)
      .filter(
        (copy) => copy.design === design && (copy.window === thisWindow || !held.has(copy.window)),
      )
      .toSorted((a, b) => b.when - a.when);
  } catch (reason) {
    recoveryTrouble.value = wordsOf(reason);
  }
}

/** What an earlier window has left unsaved, of any design. */
export type LeftOver =
  /** Files that lay in the page alone: all of them are in the copy. */
  | { readonly kind: "texts"; readonly name: string; readonly store: Store }
  /** Only the person can open its folder again. */
  | { readonly kind: "folder"; readonly name: string };

/** The folder whose edits wait for it to be opened again; null where none does. */
export const waitingFolder = signal<RecoveryCopy | null>(null);

/** The newest, where no window holds it any more. */
export async function leftOver(): Promise<LeftOver | null> {
  try {
    const [records, held] = await Promise.all([kept("recovery"), heldWindows()]);
    const [copy] = records
      .filter(isCopy)
      .filter(({ window, design }) => !held.has(window) && (isLoose(design) || isFolder(design)))
      .toSorted((a, b) => b.when - a.when);
    if (copy === undefined) return null;
    const { name, design } = copy;
    if (isLoose(design))
      return { kind: "texts", name, store: { ...looseStore(name, copy.stored), id: design } };
    waitingFolder.value = copy;
    return { kind: "folder", name };
  } catch {
    // Whoever edits is told then that the browser keeps nothing.
    return null;
  }
}

/** As the stores name their designs. */
const isLoose = (design: string): boolean => design.startsWith("loose ");
const isFolder = (design: string): boolean => design.startsWith("folder ");

export async function restore(copy: RecoveryCopy): Promise<void> {
  await restoreDesk(copy.name, copy);
  // Kept under this window's name before the old copy goes.
  await keepNow();
  await dismiss(copy);
}

export async function dismiss(copy: RecoveryCopy): Promise<void> {
  offered.value = offered.value.filter(({ key }) => key !== copy.key);
  if (waitingFolder.value?.key === copy.key) waitingFolder.value = null;
  await forget("recovery", copy.key).catch((reason) => {
    recoveryTrouble.value = wordsOf(reason);
  });
}

/** At once: before another design takes the desk. */
export async function keepNow(): Promise<void> {
  const { value: open } = store;
  if (open === null) return;
  settleAll();
  const copy: RecoveryCopy = {
    key: copyKey(),
    window: thisWindow,
    design: open.id,
    name: open.name,
    when: Date.now(),
    stored: stored.value,
    texts: texts.value,
    history: history.value,
  };
  try {
    if (unsaved.value.length === 0) await forget("recovery", copyKey());
    else await keep("recovery", copy);
    recoveryTrouble.value = null;
  } catch (reason) {
    recoveryTrouble.value = wordsOf(reason);
  }
}

async function heldWindows(): Promise<ReadonlySet<string>> {
  const held = (await navigator.locks?.query())?.held ?? [];
  return new Set(held.map(({ name }) => name ?? ""));
}

/** Records of this page's own making; one of another version is left alone. */
const isCopy = (value: unknown): value is RecoveryCopy =>
  typeof value === "object" &&
  value !== null &&
  "texts" in value &&
  value.texts instanceof Map &&
  "stored" in value &&
  value.stored instanceof Map &&
  "history" in value &&
  "design" in value &&
  "window" in value &&
  "when" in value;

const wordsOf = (reason: unknown): string => {
  if (reason instanceof DOMException && reason.name === "QuotaExceededError")
    return "the browser has no room left for them";
  return reason instanceof Error ? reason.message : "the browser does not allow it";
};
