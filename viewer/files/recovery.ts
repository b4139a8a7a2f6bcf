// Recovery copies: while there are edits that are not saved, texts and history go into the browser's keep, at most two
// seconds behind; with them the shapes and photographs of a design that lies in the page alone. A copy whose window is gone is
// offered when its design is opened again.

import { effect, signal } from "@preact/signals";
import type { DesignBinaries, DesignTexts } from "../core-messages.ts";
import { binaries, keptHistory, settleAll, texts } from "../desk.ts";
import type { History } from "../history.ts";
import { forget, keep, kept, keptAt } from "./browser-keep.ts";
import { keepTrouble } from "./keep-trouble.ts";
import { keptBytes } from "./kept-bytes.ts";
import { looseStore } from "./loose-store.ts";
import { restoreDesk } from "./saving.ts";
import { isLoose, type Store } from "./store.ts";
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
  /** Shapes and photographs that are not in it. */
  readonly leftOut: readonly string[];
}

/** Copies of the open design that no window holds any more, newest first. */
export const offered = signal<readonly RecoveryCopy[]>([]);
/** Why no copies are kept; null: they are. */
export const recoveryTrouble = signal<string | null>(null);
/** Shapes and photographs of the open design that its copy does not hold. */
export const notKept = signal<readonly string[]>([]);

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
  told([]);
  const design = store.value?.id;
  try {
    const [records, held] = await Promise.all([kept("recovery"), heldWindows()]);
    offered.value = records
      .flatMap(copyOf)
      .filter(
        (copy) => copy.design === design && (copy.window === thisWindow || !held.has(copy.window)),
      )
      .toSorted((a, b) => b.when - a.when);
  } catch (reason) {
    recoveryTrouble.value = keepTrouble(reason);
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
      .flatMap(copyOf)
      .filter(({ window, design }) => !held.has(window) && (isLoose(design) || isFolder(design)))
      .toSorted((a, b) => b.when - a.when);
    if (copy === undefined) return null;
    const { name, design } = copy;
    if (isLoose(design))
      return { kind: "texts", name, store: { ...(await storeOf(copy)), id: design } };
    waitingFolder.value = copy;
    return { kind: "folder", name };
  } catch {
    // Whoever edits is told then that the browser keeps nothing.
    return null;
  }
}

/** Of files that lay in the page alone: as they were, with what was kept of their shapes and photographs. */
const storeOf = async (copy: RecoveryCopy): Promise<Store> => {
  const troubles = copy.leftOut.map(
    (path) => `${path} was not kept: choose it again with the rest`,
  );
  return looseStore(copy.name, copy.stored, { binaries: await bytesOf(copy), troubles });
};

/** What is said to be left out may lie there still as it was before. */
const bytesOf = async ({ key, leftOut }: RecoveryCopy): Promise<DesignBinaries> => {
  const record = await keptAt("recovery-bytes", key);
  const files = isBytes(record) ? [...record.files] : [];
  return new Map(files.filter(([path]) => !leftOut.includes(path)));
};

/** As the store names its design. */
const isFolder = (design: string): boolean => design.startsWith("folder ");

export async function restore(copy: RecoveryCopy): Promise<void> {
  await restoreDesk(copy.name, { ...copy, binaries: await bytesOf(copy) });
  // Kept under this window's name before the old copy goes.
  await keepNow();
  await dismiss(copy);
}

export async function dismiss(copy: RecoveryCopy): Promise<void> {
  offered.value = offered.value.filter(({ key }) => key !== copy.key);
  if (waitingFolder.value?.key === copy.key) waitingFolder.value = null;
  await forgetCopy(copy.key).catch((reason) => {
    recoveryTrouble.value = keepTrouble(reason);
  });
}

const forgetCopy = async (key: string): Promise<void> => {
  if (lastBytes?.key === key) lastBytes = null;
  await forget("recovery", key);
  await forget("recovery-bytes", key);
};

/** At once: before another design takes the desk. */
export async function keepNow(): Promise<void> {
  const { value: open } = store;
  if (open === null) return;
  settleAll();
  const key = copyKey();
  const copy: Omit<RecoveryCopy, "leftOut"> = {
    key,
    window: thisWindow,
    design: open.id,
    name: open.name,
    when: Date.now(),
    stored: stored.value,
    texts: texts.value,
    history: keptHistory(),
  };
  try {
    if (unsaved.value.length === 0) {
      told([]);
      await forgetCopy(key);
    }
    // Bytes first: no copy speaks of what is not there.
    else await keep("recovery", { ...copy, leftOut: await keepBytes(key, open.id) });
    recoveryTrouble.value = null;
  } catch (reason) {
    recoveryTrouble.value = keepTrouble(reason);
  }
}

/** What was last kept, and under which key: megabytes are not written anew for every word that is typed. */
let lastBytes: { readonly key: string; readonly of: DesignBinaries } | null = null;

/** Gives the names of what is not kept. A folder and the server have theirs already, and give them again. */
async function keepBytes(key: string, design: string): Promise<readonly string[]> {
  if (!isLoose(design)) return told([]);
  const of = binaries.value;
  if (lastBytes?.key === key && lastBytes.of === of) return notKept.value;
  const { files, leftOut } = keptBytes(of);
  try {
    if (files.size === 0) await forget("recovery-bytes", key);
    else await keep("recovery-bytes", { key, files });
    lastBytes = { key, of };
    return told(leftOut);
  } catch {
    // No room for them: the texts may still find some. Older ones stay for the older copy, should the texts find none either.
    lastBytes = null;
    return told([...of.keys()].toSorted());
  }
}

const told = (leftOut: readonly string[]): readonly string[] => {
  notKept.value = leftOut;
  return leftOut;
};

async function heldWindows(): Promise<ReadonlySet<string>> {
  const held = (await navigator.locks?.query())?.held ?? [];
  return new Set(held.map(({ name }) => name ?? ""));
}

const isBytes = (value: unknown): value is { readonly files: DesignBinaries } =>
  typeof value === "object" && value !== null && "files" in value && value.files instanceof Map;

/** Records of this page's own making; one of another version is left alone. The first version kept no bytes and said nothing of it. */
const copyOf = (value: unknown): readonly RecoveryCopy[] =>
  isCopy(value) ? [{ ...value, leftOut: value.leftOut ?? [] }] : [];

const isCopy = (
  value: unknown,
): value is Omit<RecoveryCopy, "leftOut"> & Partial<Pick<RecoveryCopy, "leftOut">> =>
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
