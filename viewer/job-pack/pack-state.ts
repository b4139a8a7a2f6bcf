// What the room of the job pack holds: the packs that were made and from which texts, the one that is being made, and the file
// that is looked at.

import { computed, type ReadonlySignal, signal } from "@preact/signals";
import type { PackFile } from "../../src/pack/pack-file.ts";
import type { DesignSources } from "../core-messages.ts";
import {
  binaries,
  consoleFile,
  consoleReading,
  designName,
  panel,
  sourcesOf,
  texts,
} from "../desk.ts";
import { type PackRun, runPack } from "./pack-client.ts";
import type { MadePack, PackKinds, PackOf, PackWant } from "./pack-messages.ts";

export interface HeldMade {
  readonly of: DesignSources;
  readonly made: MadePack;
}

export type Making =
  | { readonly kind: "idle" }
  | { readonly kind: "running"; readonly want: PackWant; readonly words: string }
  | { readonly kind: "failed"; readonly why: string };

const packs = signal<ReadonlyMap<string, HeldMade>>(new Map());
const isConsoleAsked = signal(false);
export const making = signal<Making>({ kind: "idle" });
/** What was done last, and with which pack; null: with whatever is looked at. */
const told = signal<{ readonly of: string | null; readonly words: string }>({
  of: null,
  words: "",
});
const chosenPath = signal<string | null>(null);
/** Chosen for all packs of the page, until it is chosen otherwise. */
export const kinds = signal<PackKinds>({ only: "everything", card: false });

export const hasConsole: ReadonlySignal<boolean> = computed(() => consoleReading.value !== null);

/** The pack that is shown: of the open panel, or of the console itself. */
export const want: ReadonlySignal<PackWant> = computed(() =>
  wanting(
    isConsoleAsked.value && hasConsole.value
      ? { kind: "console" }
      : { kind: "panel", panel: panel.value?.name ?? "" },
  ),
);

/** Of all packs, with the same kinds of files. */
export const wantAll: ReadonlySignal<PackWant> = computed(() => wanting({ kind: "all" }));

const wanting = (what: PackOf): PackWant => ({ ...what, ...kinds.value });

/** What was done last, in words that are read out: nothing that was said of another pack. */
export const news: ReadonlySignal<string> = computed(() => {
  const { of, words } = told.value;
  return of === null || of === keyOf(want.value) || of === keyOf(wantAll.value) ? words : "";
});

export const shown: ReadonlySignal<HeldMade | null> = computed(
  () => packs.value.get(keyOf(want.value)) ?? null,
);

/** All packs in one, where they were made from what is open as it is now. */
export const whole: ReadonlySignal<MadePack | null> = computed(() => {
  const held = packs.value.get(keyOf(wantAll.value)) ?? null;
  return held !== null && isOfNow(held) ? held.made : null;
});

export const isOutOfDate: ReadonlySignal<boolean> = computed(
  () => shown.value !== null && !isOfNow(shown.value),
);

/** Shapes and pictures count as texts do: a pack has them in its bodies and drawings. */
const isOfNow = ({ of }: HeldMade): boolean =>
  of.texts === texts.value && of.binaries === binaries.value;

export const chosenFile: ReadonlySignal<PackFile | null> = computed(() => {
  const files = shown.value?.made.files ?? [];
  return files.find(({ path }) => path === chosenPath.value) ?? files[0] ?? null;
});

export const chooseFile = (path: string): void => {
  chosenPath.value = path;
};

export const askConsole = (isAsked: boolean): void => {
  isConsoleAsked.value = isAsked;
};

let run: PackRun | null = null;

export const makePack = async (wanted: PackWant): Promise<void> => {
  stop();
  // Another console may be chosen while this one's pack is made.
  const key = keyOf(wanted);
  const of = { texts: texts.value, binaries: binaries.value };
  making.value = { kind: "running", want: wanted, words: "beginning" };
  // It is of another pack, or of this one as it was.
  told.value = { of: null, words: "" };
  const mine = runPack(wanted, sourcesOf(of.texts), (words) => {
    if (run === mine) making.value = { kind: "running", want: wanted, words };
  });
  run = mine;
  const outcome = await mine.done;
  if (run !== mine) return;
  run = null;
  if (outcome.kind === "failed") {
    making.value = { kind: "failed", why: outcome.why };
    return;
  }
  making.value = { kind: "idle" };
  const { made } = outcome;
  packs.value = new Map([...packs.value, [key, { of, made }]]);
  told.value = { of: key, words: madeWords(made) };
};

/** Of the pack that is there already and is looked at again. */
export const tellShown = (): void => {
  if (shown.value !== null)
    told.value = { of: keyOf(want.value), words: madeWords(shown.value.made) };
};

export const giveUp = (): void => {
  stop();
  making.value = { kind: "idle" };
  const what = shown.value === null ? "nothing was made" : "what is shown was made before";
  told.value = { of: keyOf(want.value), words: `Given up: ${what}.` };
};

const stop = (): void => {
  run?.cancel();
  run = null;
};

const madeWords = ({ files, held, zip }: MadePack): string => {
  if (held.length > 0) return "Not made: see what stands against it.";
  if (zip === null) return "There is nothing to make.";
  return files.length === 0 ? `${zip.name} is made.` : `The pack is made: ${files.length} files.`;
};

/** A pack of another design, or of another console among its texts, is none of this one. */
const keyOf = (wanted: PackWant): string =>
  [
    designName.value,
    consoleFile.value ?? "",
    wanted.kind,
    wanted.kind === "panel" ? wanted.panel : "",
    wanted.only,
    wanted.card,
  ].join("\n");
