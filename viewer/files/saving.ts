// Opening a store's design, saving it, and keeping up with what changes outside. One thing after the other: a change that
// is told of while a save is under way is looked at after it.

import { effect } from "@preact/signals";
import type { DesignBinaries, DesignTexts } from "../core-messages.ts";
import {
  carryOut,
  isStepOpen,
  openDesign,
  refusedStep,
  takeBinaries,
  takeFromOutside,
  texts,
} from "../desk.ts";
import { EMPTY_HISTORY, type History, type Move, type Step } from "../history.ts";
import { locks } from "../locks.ts";
import { handsEmpty } from "../when-current.ts";
import { type Conflict, type Reconciled, reconcile } from "./reconcile.ts";
import { unstopped } from "./sentence.ts";
import type { Store, StoredDesign, TextChange } from "./store.ts";
import {
  conflicts,
  deletedOutside,
  fileNews,
  lostStore,
  refuse,
  store,
  stored,
  storeTroubles,
  tell,
  unreadNow,
  unsaved,
} from "./stored-state.ts";
import { textMove } from "./text-move.ts";

/**
 * Puts a store's design on the desk and follows it. Gives why it can't, or null; the reading follows, of the panel in the
 * first file before the others where one is given.
 */
export async function openStore(next: Store, first: string | null = null): Promise<string | null> {
  const loaded = await next.load();
  if (loaded.kind === "trouble") return loaded.why;
  unfollow();
  store.value = next;
  stored.value = loaded.design.texts;
  conflicts.value = [];
  deletedOutside.value = new Set();
  fileNews.value = null;
  lostStore.value = null;
  takeState(loaded.design);
  void openDesign(next.name, loaded.design, { history: EMPTY_HISTORY, first });
  unfollow = next.follow({
    changed: () => void inTurn(takeChanges),
    lost: (why) => {
      lostStore.value = why;
    },
  });
  return null;
}

let unfollow: () => void = () => undefined;

export const save = (): Promise<void> => inTurn(saveNow);

/** Keeps what is here: the next save writes it over what stands there. */
export function keepMine({ file, theirs }: Conflict): void {
  settle(file, theirs);
  tell(`${file}: kept as it is here; save to write it`);
}

export function takeTheirs({ file, theirs }: Conflict): void {
  const move = textMove(file, texts.value.get(file) ?? null, theirs);
  carryOut([move], `take over ${file}`);
  settle(file, theirs);
  tell(`${file}: taken over as it stands there`);
}

/** Texts and history of a recovery copy, over what is stored now: whatever changed there since is joined or asked about. */
export async function restoreDesk(
  what: string,
  copy: {
    readonly texts: ReadonlyMap<string, string>;
    readonly stored: ReadonlyMap<string, string>;
    readonly history: History;
    /** That were kept with it: what the store has is as the store has it. */
    readonly binaries: DesignBinaries;
  },
): Promise<void> {
  await inTurn(async () => {
    const loaded = await store.value?.load();
    const theirs = loaded?.kind === "loaded" ? loaded.design : null;
    if (theirs === null) {
      refuse("Nothing was restored: the design can't be read now.");
      return;
    }
    stored.value = copy.stored;
    const binaries = new Map([...copy.binaries, ...theirs.binaries]);
    void openDesign(what, { texts: copy.texts, binaries }, { history: copy.history, first: null });
    tell("Restored what was not saved.");
    takeOver(theirs);
  });
}

const settle = (file: string, base: string | null): void => {
  conflicts.value = conflicts.value.filter((each) => each.file !== file);
  const next = new Map(stored.value);
  if (base === null) next.delete(file);
  else next.set(file, base);
  stored.value = next;
};

let turn: Promise<unknown> = Promise.resolve();

const inTurn = (work: () => Promise<void>): Promise<void> => {
  const mine = turn.then(closedStep).then(handsEmpty).then(work);
  turn = mine.catch(() => undefined);
  return mine;
};

/** A drag that is under way is carried to its end first. */
const closedStep = (): Promise<void> =>
  new Promise((done) => {
    const stop = effect(() => {
      if (isStepOpen.value) return;
      done();
      queueMicrotask(() => stop());
    });
  });

async function takeChanges(): Promise<void> {
  const loaded = await store.value?.load();
  if (loaded === undefined) return;
  if (loaded.kind === "trouble") {
    lostStore.value = loaded.why;
    return;
  }
  const before = unreadNow.value;
  takeState(loaded.design);
  tellOfUnread(before, loaded.design);
  takeOver(loaded.design);
  takeBinaries(loaded.design.binaries);
}

const takeState = ({ isReadOnly, locked, troubles, unread }: StoredDesign): void => {
  const lifted = [...locks.value.files].filter(([file]) => !isReadOnly && !locked.has(file));
  locks.value = {
    design: isReadOnly ? "this design was opened read-only" : null,
    files: locked,
  };
  storeTroubles.value = troubles;
  unreadNow.value = new Set(unread);
  // What was refused for a lock is no news once it is gone.
  if (lifted.some(([, why]) => why === refusedStep.value)) refusedStep.value = null;
  const { kind, words } = fileNews.value ?? { kind: "done", words: "" };
  if (kind === "refused" && lifted.some(([, why]) => words.includes(why)))
    tell(`${lifted.map(([file]) => file).join(", ")} can be written again.`);
};

function tellOfUnread(before: ReadonlySet<string>, { texts: now, unread }: StoredDesign): void {
  const lost = unread.filter((file) => !before.has(file) && stored.value.has(file));
  const back = [...before].filter((file) => now.has(file) && stored.value.has(file));
  if (back.length > 0) tell(`Can be read again: ${back.join(", ")}`);
  if (lost.length > 0) tell(`Can't be read now, and shown as it last stood: ${lost.join(", ")}`);
}

/** What can be written may have changed since it was last asked for. */
async function lookForLocks(): Promise<void> {
  const loaded = await store.value?.load();
  if (loaded?.kind === "loaded") takeState(loaded.design);
}

function takeOver({ texts: there, unread }: Pick<StoredDesign, "texts" | "unread">): void {
  // What can't be read is not gone: as far as anybody knows it is as it was.
  const asKnown = [...stored.value].filter(([file]) => unread.includes(file));
  const theirs = new Map([...there, ...asKnown]);
  const found = reconcile({ stored: stored.value, mine: texts.value, theirs });
  take(found);
  conflicts.value = found.conflicts;
  if (found.conflicts.length > 0)
    refuse(`Changed here and outside: ${found.conflicts.map(({ file }) => file).join(", ")}`);
}

function take(found: Reconciled): void {
  const standing = standingAnew(found.stored);
  const carried = takeFromOutside({ steps: stepsOf(found), standing });
  if (carried.kind === "refused") refuse(carried.why);
  else {
    if (found.moves.length > 0) tell(newsOf(found));
    stored.value = found.stored;
    deletedOutside.value = without(standing, [...deletedOutside.value, ...deletedIn(found)]);
  }
}

const standingAnew = (now: DesignTexts): readonly string[] =>
  [...now.keys()].filter((file) => !stored.value.has(file));

const without = (some: readonly string[], all: Iterable<string>): ReadonlySet<string> =>
  new Set([...all].filter((each) => !some.includes(each)));

/** A file that went is a step of its own: it may come back by itself. */
function stepsOf(found: Reconciled): readonly Step[] {
  const deleted = deletedIn(found);
  const ofFile = (file: string): readonly Move[] =>
    found.moves.filter((move) => move.file === file);
  const others = [...found.takenOver, ...found.joined].filter((file) => !deleted.includes(file));
  return [
    { what: `take over ${others.join(", ")}`, moves: others.flatMap(ofFile) },
    ...deleted.map((file) => ({ what: `take away ${file}, deleted outside`, moves: ofFile(file) })),
  ];
}

/** What was taken over by taking its text away. */
const deletedIn = ({ takenOver, stored: now }: Reconciled): readonly string[] =>
  takenOver.filter((file) => !now.has(file));

const newsOf = (found: Reconciled): string => {
  const deleted = deletedIn(found);
  const there = found.takenOver.filter((file) => !deleted.includes(file));
  const again = there.filter((file) => deletedOutside.value.has(file));
  const changed = there.filter((file) => !again.includes(file));
  const { joined } = found;
  return [
    ...(deleted.length === 0
      ? []
      : [`deleted outside: ${deleted.join(", ")}. Undo brings back the text, to be saved anew`]),
    ...(again.length === 0 ? [] : [`there again: ${again.join(", ")}`]),
    ...(changed.length === 0 ? [] : [`changed outside and taken over: ${changed.join(", ")}`]),
    ...(joined.length === 0 ? [] : [`changed here and outside, joined: ${joined.join(", ")}`]),
  ]
    .join("; ")
    .replace(/^./, (first) => first.toUpperCase());
};

/** A text may change outside again while what was found of it is joined. */
const MOST_TRIES = 3;

async function saveNow(): Promise<void> {
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const why = whyNotNow();
    if (why !== null) {
      tell(why);
      return;
    }
    if (!(await trySave())) return;
  }
  refuse("Not saved: the files change outside again and again.");
}

const whyNotNow = (): string | null => {
  const [undecided] = conflicts.value;
  if (undecided !== undefined)
    return `Not saved: ${undecided.file} has changed outside too. Decide about it first.`;
  return unsaved.value.length === 0 ? "Nothing has changed since it was saved." : null;
};

/** Whether it must be tried again. */
async function trySave(): Promise<boolean> {
  const changes: readonly TextChange[] = unsaved.value.map((file) => ({
    file,
    before: stored.value.get(file) ?? null,
    after: texts.value.get(file) ?? "",
  }));
  const outcome = await store.value?.save(changes);
  switch (outcome?.kind) {
    case undefined:
      return false;
    case "refused":
      refuse(`Not saved: ${unstopped(outcome.why)}. Nothing is lost: the edits are still here.`);
      await lookForLocks();
      return false;
    case "saved":
      takeSaved(new Map([...stored.value, ...changes.map(writtenPair)]));
      if (locks.value.files.size > 0) await lookForLocks();
      tell(`${outcome.how}: ${changes.map(({ file }) => file).join(", ")}`);
      return false;
    case "changed-outside": {
      const theirs = new Map(stored.value);
      for (const [file, text] of outcome.files)
        if (text === null) theirs.delete(file);
        else theirs.set(file, text);
      takeOver({ texts: theirs, unread: [] });
      return true;
    }
  }
}

function takeSaved(now: DesignTexts): void {
  const standing = standingAnew(now);
  takeFromOutside({ steps: [], standing });
  stored.value = now;
  deletedOutside.value = without(standing, deletedOutside.value);
}

const writtenPair = ({ file, after }: TextChange): readonly [string, string] => [file, after];
