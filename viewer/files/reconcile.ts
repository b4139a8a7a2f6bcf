// What the page has, what it knows to be stored, and what really stands there now: file by file, what is taken over, what
// is joined, and what only the person can decide. Nothing is ever dropped that was changed on either side.

import type { DesignTexts } from "../core-messages.ts";
import type { Move } from "../history.ts";
import { mergeLines } from "./line-merge.ts";
import { textMove } from "./text-move.ts";

/** A file that was changed here and outside, in the same place. null: it is not there. */
export interface Conflict {
  readonly file: string;
  /** What both changes began with. */
  readonly base: string | null;
  readonly theirs: string | null;
}

export interface Sides {
  /** What the page knows to be stored. */
  readonly stored: DesignTexts;
  readonly mine: DesignTexts;
  /** What really stands there. */
  readonly theirs: DesignTexts;
}

export interface Reconciled {
  readonly moves: readonly Move[];
  /** Files that were taken over whole, and files in which both changes were joined. */
  readonly takenOver: readonly string[];
  readonly joined: readonly string[];
  readonly conflicts: readonly Conflict[];
  /** What the page knows to be stored from now on. */
  readonly stored: DesignTexts;
}

export function reconcile(sides: Sides): Reconciled {
  const files = [
    ...new Set([...sides.stored.keys(), ...sides.mine.keys(), ...sides.theirs.keys()]),
  ];
  const outcomes = files.toSorted().map((file) => ({ file, outcome: outcomeOf(file, sides) }));
  const stored = new Map(sides.stored);
  for (const { file, outcome } of outcomes) {
    const text = outcome.kind === "conflict" ? sides.stored.get(file) : sides.theirs.get(file);
    if (text === undefined) stored.delete(file);
    else stored.set(file, text);
  }
  const moved = outcomes.flatMap(({ file, outcome }) =>
    outcome.kind === "taken-over" || outcome.kind === "joined" ? [{ file, ...outcome }] : [],
  );
  return {
    stored,
    moves: moved.map(({ move }) => move),
    takenOver: moved.filter(({ kind }) => kind === "taken-over").map(({ file }) => file),
    joined: moved.filter(({ kind }) => kind === "joined").map(({ file }) => file),
    conflicts: outcomes.flatMap(({ file, outcome }) =>
      outcome.kind === "conflict"
        ? [{ file, base: textIn(sides.stored, file), theirs: textIn(sides.theirs, file) }]
        : [],
    ),
  };
}

type Outcome =
  | { readonly kind: "as-it-is" }
  | { readonly kind: "taken-over" | "joined"; readonly move: Move }
  | { readonly kind: "conflict" };

function outcomeOf(file: string, sides: Sides): Outcome {
  const base = textIn(sides.stored, file);
  const mine = textIn(sides.mine, file);
  const theirs = textIn(sides.theirs, file);
  if (theirs === base || theirs === mine) return { kind: "as-it-is" };
  if (mine === base) return { kind: "taken-over", move: textMove(file, mine, theirs) };
  if (base === null || mine === null || theirs === null) return { kind: "conflict" };
  const merged = mergeLines({ base, mine, theirs });
  return merged.kind === "merged"
    ? { kind: "joined", move: textMove(file, mine, merged.text) }
    : { kind: "conflict" };
}

const textIn = (texts: DesignTexts, file: string): string | null => texts.get(file) ?? null;
