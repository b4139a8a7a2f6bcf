// What lies on the desk: the design that is open, its texts with every edit so far, its reading, and what the person
// looking at it has chosen. All state of the page is here, as signals; the views read them and call the functions below.

import { batch, computed, type ReadonlySignal, signal } from "@preact/signals";
import type { TextEdit } from "../src/diagnostics/text-edit.ts";
import { giveUpAll, giveUpReadings, readDesign } from "./core-client.ts";
import type {
  ConsoleReading,
  DesignBinaries,
  DesignReading,
  DesignSources,
  DesignTexts,
  PanelReading,
  PlacedFinding,
} from "./core-messages.ts";
import { consolesIn, withOneConsole, withOnePanel } from "./first-files.ts";
import { type Outside, withOutside } from "./gone-and-back.ts";
import { beginWith, binaries, binaryAt, putBeside, takeAway, takeStored } from "./held-binaries.ts";
import {
  type Desk,
  EMPTY_HISTORY,
  type History,
  type Move,
  type Stepped,
  stepBack,
  stepForth,
  withEdits,
  withMoves,
  withStep,
} from "./history.ts";
import {
  NO_PANELS,
  panelsWithDrawn,
  panelsWithKept,
  type ShownPanels,
  stillThere,
  type Unread,
} from "./kept-panels.ts";
import { lockOn } from "./locks.ts";

export type Progress =
  | { readonly kind: "empty" }
  | { readonly kind: "reading"; readonly what: string }
  | { readonly kind: "shown"; readonly what: string }
  | { readonly kind: "refused"; readonly why: string }
  | { readonly kind: "failed"; readonly why: string };

export type EditOutcome =
  | { readonly kind: "done" }
  /** Nothing is changed yet: the person is asked first. */
  | { readonly kind: "asked" }
  | { readonly kind: "refused"; readonly why: string };

/** Edits that will be one step, as those of a drag; `before` is what giving it up goes back to. */
interface OpenStep {
  readonly what: string;
  readonly moves: readonly Move[];
  readonly before: DesignTexts;
}

const held = signal<Desk>({ texts: new Map(), history: EMPTY_HISTORY });
const openStep = signal<OpenStep | null>(null);
const reading = signal<DesignReading | null>(null);
/** What was last read, whichever console of it, and what was last drawn; null: nothing yet. */
const readOf = signal<DesignSources | null>(null);
const drawnOf = signal<DesignSources | null>(null);
const shownPanels = signal<ShownPanels>(NO_PANELS);
const panelName = signal<string | null>(null);
const wantedConsole = signal<string | null>(null);
const openedName = signal("");
/** As it was wanted at the last reading: panels of another console are not kept. */
let readConsole: string | null = null;
/** Counts the designs that were opened: a reading of an earlier one is of no use. */
let opening = 0;

export const progress = signal<Progress>({ kind: "empty" });
/** What the open design is called, however far its reading has come; empty before the first one. */
export const designName: ReadonlySignal<string> = openedName;
export const hidden = signal<ReadonlySet<string>>(new Set());
export const pointedAt = signal<PlacedFinding | null>(null);
/** Instance ids of the open panel. No part of the history. */
export const selection = signal<readonly string[]>([]);
/** Why the last undo or redo was not done; null where it was. */
export const refusedStep = signal<string | null>(null);

export const texts: ReadonlySignal<DesignTexts> = computed(() => held.value.texts);
export { binaries, binaryAt };
export const history: ReadonlySignal<History> = computed(() => held.value.history);
/** As it goes with the texts as they are now: a step that is open is in them already. */
export const keptHistory = (): History => {
  const { history: closed } = held.value;
  return openStep.value === null ? closed : withStep(closed, openStep.value);
};
/** What undo would take back, in words; null where there is nothing. */
export const nextUndo: ReadonlySignal<string | null> = computed(() =>
  openStep.value === null ? (held.value.history.done.at(-1)?.what ?? null) : null,
);
export const nextRedo: ReadonlySignal<string | null> = computed(() =>
  openStep.value === null ? (held.value.history.undone[0]?.what ?? null) : null,
);
/** Whether a step is open: what changes outside waits until it is closed. */
export const isStepOpen: ReadonlySignal<boolean> = computed(() => openStep.value !== null);
export const canUndo: ReadonlySignal<boolean> = computed(() => nextUndo.value !== null);
export const canRedo: ReadonlySignal<boolean> = computed(() => nextRedo.value !== null);

export const panels = computed<readonly PanelReading[]>(() => shownPanels.value.panels);
export const findings = computed<readonly PlacedFinding[]>(() => reading.value?.findings ?? []);
export const panel = computed<PanelReading | null>(
  () => panels.value.find(({ name }) => name === panelName.value) ?? panels.value[0] ?? null,
);
/** Why the open panel is shown as it last could be read; null: it is that of the text. */
export const unread: ReadonlySignal<Unread | null> = computed(
  () => shownPanels.value.unread.get(panel.value?.name ?? "") ?? null,
);
/** The console, where the design is one. */
export const consoleReading: ReadonlySignal<ConsoleReading | null> = computed(
  () => reading.value?.console ?? null,
);
/** Every console among the texts, the nearest to the root first. */
export const consoleFiles: ReadonlySignal<readonly string[]> = computed(() =>
  consolesIn(held.value.texts),
);
/** The one that is looked at; null where there is none. */
export const consoleFile: ReadonlySignal<string | null> = computed(() => {
  const wanted = wantedConsole.value;
  const all = consoleFiles.value;
  return wanted !== null && all.includes(wanted) ? wanted : (all[0] ?? null);
});
const isOfNow = (of: DesignSources | null): boolean =>
  of?.texts === held.value.texts && of.binaries === binaries.value;
/** Whether panels, console and findings are those of the texts, shapes and photographs as they are now. */
export const isCurrent: ReadonlySignal<boolean> = computed(() => isOfNow(readOf.value));
/** Whether the picture is that of them as they are now: sooner than `isCurrent`, since it waits for no judgement. */
export const isDrawn: ReadonlySignal<boolean> = computed(() => isOfNow(drawnOf.value));

/** Edits that belong together, in one file or in several: all or none of them, and one step unless a step is open. */
export function edit(edits: readonly TextEdit[], what: string): EditOutcome {
  const why = lockOn(edits.map(({ file }) => file));
  if (why !== null) return { kind: "refused", why };
  if (openStep.value === null && asksFirst(edits, what)) return { kind: "asked" };
  const changed = withEdits(texts.value, edits);
  if (changed.kind === "refused") return changed;
  return taken(changed, what);
}

let asksFirst: (edits: readonly TextEdit[], what: string) => boolean = () => false;

/** Who looks at every edit before it is made, and takes those that the person must be asked about. */
export function askBefore(asks: typeof asksFirst): void {
  asksFirst = asks;
}

/** Moves of whole files or of their texts, as one step, whatever is locked: a snapshot brought back. */
export function carryOut(moves: readonly Move[], what: string): EditOutcome {
  const changed = withMoves(texts.value, moves);
  return changed.kind === "refused" ? changed : taken(changed, what);
}

/** What has changed outside; the person's own redo outlives it where it can. Not while a step is open. */
export function takeFromOutside(outside: Outside): EditOutcome {
  const taken = withOutside(held.value, outside);
  if (taken.kind === "refused") return taken;
  if (taken.desk !== held.value) show(taken.desk);
  return { kind: "done" };
}

/** Begins a step of several edits: whatever is edited until `commit` is taken back by one undo. */
export function begin(what: string): void {
  commit();
  openStep.value = { what, moves: [], before: texts.value };
}

export function commit(): void {
  const step = openStep.value;
  if (step === null) return;
  openStep.value = null;
  held.value = { ...held.value, history: withStep(held.value.history, step) };
}

/** Gives the open step up: the texts are again as they were at `begin`. */
export function abandon(): void {
  const step = openStep.value;
  if (step === null) return;
  openStep.value = null;
  if (step.moves.length > 0) show({ ...held.value, texts: step.before });
}

const inHand = new Set<() => void>();

/** A view's way to make an edit of what it has in hand (a word being typed, a nudge), called before texts are kept. */
export function settleWith(work: () => void): void {
  inHand.add(work);
}

/** Whatever is in hand becomes an edit now: before saving, before a change outside is taken over. */
export function settleAll(): void {
  for (const work of inHand) work();
}

export const undo = (): void => step(stepBack);

export const redo = (): void => step(stepForth);

export function choosePanel(name: string): void {
  if (name !== panel.value?.name) selection.value = [];
  panelName.value = name;
  pointedAt.value = null;
}

export function chooseConsole(file: string): void {
  if (file === consoleFile.value) return;
  wantedConsole.value = file;
  [readOf.value, drawnOf.value] = [null, null];
  panelName.value = null;
  pointedAt.value = null;
  selection.value = [];
  void readAgain();
}

export function pointAt(finding: PlacedFinding | null): void {
  pointedAt.value = finding;
  if (finding !== null && finding.finding.panel !== "") panelName.value = finding.finding.panel;
}

export function showSheet(name: string, isShown: boolean): void {
  const next = new Set(hidden.value);
  if (isShown) next.delete(name);
  else next.add(name);
  hidden.value = next;
}

export interface OpenedHow {
  /** None yet, or that of a recovery copy. */
  readonly history: History;
  /** The text of the panel that is read by itself before all is, so that something is soon seen; null: none. */
  readonly first: string | null;
}

const AS_STORED: OpenedHow = { history: EMPTY_HISTORY, first: null };

/** Puts a design on the desk: its texts as they were stored. */
export async function openDesign(
  what: string,
  sources: DesignSources,
  { history: from, first }: OpenedHow = AS_STORED,
): Promise<void> {
  opening += 1;
  const askedFor = opening;
  giveUpReadings();
  openedName.value = what;
  beginWith(sources.binaries);
  wantedConsole.value = null;
  openStep.value = null;
  held.value = { texts: sources.texts, history: from };
  reading.value = null;
  [readOf.value, drawnOf.value] = [null, null];
  shownPanels.value = NO_PANELS;
  panelName.value = null;
  pointedAt.value = null;
  selection.value = [];
  hidden.value = new Set();
  progress.value = { kind: "reading", what };
  if (first !== null) await readAlone(first);
  if (askedFor === opening) await readAgain();
}

/** One panel of the design that was just opened; it goes on being read. */
async function readAlone(panelFile: string): Promise<void> {
  const askedFor = opening;
  const reply = await readDesign({
    texts: withOnePanel(held.value.texts, panelFile),
    binaries: binaries.value,
  });
  if (reply?.kind === "read" && askedFor === opening) takeReading(reply);
}

/** What is open stays open: by its name while it can't be read, by its file where its name is typed anew. */
function takeReading(reply: DesignReading): void {
  const open = panel.value;
  const before = readConsole === wantedConsole.value ? shownPanels.value : NO_PANELS;
  const now = panelsWithKept(before, reply, held.value.texts);
  readConsole = wantedConsole.value;
  const isNamed = now.panels.some(({ name }) => name === open?.name);
  const renamed = isNamed ? undefined : now.panels.find(({ file }) => file === open?.file);
  batch(() => {
    panelName.value = renamed?.name ?? panelName.value;
    [shownPanels.value, reading.value] = [now, reply];
    // Another panel may have things of the same names.
    if (panel.value?.file !== open?.file) selection.value = [];
  });
}

/** Texts with the shapes that they name: what a design is read from, one console of it. */
export const sourcesOf = (held: DesignTexts): DesignSources => ({
  texts: withOneConsole(held, consoleFile.value),
  binaries: binaries.value,
});

/** A picture that was put beside the texts. */
export function addBinary(path: string, bytes: Uint8Array): void {
  if (putBeside(path, bytes)) readAnew();
}

/** One that was put beside the texts, out of the page again; false where it was not put there, or is stored by now. */
export function takeAwayBinary(path: string): boolean {
  const isTaken = takeAway(path);
  if (isTaken) readAnew();
  return isTaken;
}

/** Shapes and pictures that the stored texts name, where they have changed outside. */
export function takeBinaries(next: DesignBinaries): void {
  if (takeStored(next)) readAnew();
}

/** Whether the desk waits for the reading of its texts: for the first one, or for that of a change. */
export const isReading: ReadonlySignal<boolean> = computed(() => {
  const { kind } = progress.value;
  return kind === "reading" || (kind === "shown" && !isCurrent.value);
});

/** Ends a reading that takes too long; the texts stay, and the next change of them is read again. */
export function giveUpReading(): void {
  const now = progress.value;
  const what = now.kind === "reading" ? now.what : openedName.value;
  opening += 1;
  giveUpAll();
  progress.value = {
    kind: "refused",
    why: `Reading ${what} was given up. It is read again with the next change.`,
  };
}

function taken(
  changed: { readonly texts: DesignTexts; readonly moves: readonly Move[] },
  what: string,
): EditOutcome {
  const open = openStep.value;
  if (changed.moves.length === 0) return { kind: "done" };
  if (open === null) {
    const { moves } = changed;
    show({ texts: changed.texts, history: withStep(held.value.history, { what, moves }) });
  } else {
    openStep.value = { ...open, moves: [...open.moves, ...changed.moves] };
    show({ ...held.value, texts: changed.texts });
  }
  return { kind: "done" };
}

function step(take: (desk: Desk) => Stepped): void {
  if (openStep.value !== null) return;
  const stepped = take(held.value);
  if (stepped.kind === "nothing") return;
  const why =
    stepped.kind === "refused" ? stepped.why : lockOn(stepped.step.moves.map(({ file }) => file));
  refusedStep.value = why;
  if (stepped.kind === "stepped" && why === null) show(stepped.desk);
}

function show(desk: Desk): void {
  held.value = desk;
  refusedStep.value = null;
  readAnew();
}

/** Something has changed: a reading that was given up, or that failed, is tried again. */
function readAnew(): void {
  const { kind } = progress.value;
  if (kind === "refused" || kind === "failed")
    progress.value = { kind: "reading", what: openedName.value };
  void readAgain();
}

async function readAgain(): Promise<void> {
  const asked: DesignSources = { texts: held.value.texts, binaries: binaries.value };
  const [askedFor, wanted] = [opening, wantedConsole.value];
  // A reading of another design, or of another console of it, is no picture of this one.
  const isWanted = (): boolean => askedFor === opening && wanted === wantedConsole.value;
  const reply = await readDesign(sourcesOf(asked.texts), (drawn) => {
    if (isWanted()) takeDrawn(drawn, asked);
  });
  if (reply === null || !isWanted()) return;
  if (reply.kind === "failed") {
    progress.value = { kind: "failed", why: reply.why };
    return;
  }
  takeReading(reply);
  [readOf.value, drawnOf.value] = [asked, asked];
  pointedAt.value = stillThere(pointedAt.value, reply.findings);
  // Said once: whoever shows it is not drawn again with every edit.
  if (progress.value.kind !== "shown") progress.value = { kind: "shown", what: openedName.value };
}

const takeDrawn = (drawn: readonly PanelReading[], of: DesignSources): void =>
  batch(() => {
    shownPanels.value = panelsWithDrawn(shownPanels.value, drawn);
    drawnOf.value = of;
  });
