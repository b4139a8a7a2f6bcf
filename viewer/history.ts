// The one history of edits: each step holds the text edits that made it and those that take it back, without end and
// across saves. Pure data: whoever holds the texts hands them in and gets the new ones.

import { applyEdits, type TextEdit } from "../src/diagnostics/text-edit.ts";
import type { DesignTexts } from "./core-messages.ts";

/** One change of one file. A file that comes or goes is told apart from one whose text changes. */
export type Move =
  | {
      readonly kind: "edit";
      readonly file: string;
      readonly forth: readonly TextEdit[];
      readonly back: readonly TextEdit[];
    }
  | {
      readonly kind: "presence";
      readonly file: string;
      /** null: the file is not there. */
      readonly before: string | null;
      readonly after: string | null;
    }
  /** A shape or photograph that comes or goes beside the texts. Whoever holds the bytes carries it out, as the step is taken. */
  | {
      readonly kind: "bytes";
      readonly file: string;
      /** null: the file is not there. */
      readonly before: Content | null;
      readonly after: Content | null;
      /** Whether it lies in the page alone: what lies where the design is kept stays there. */
      readonly isInPage: boolean;
    };

/** Of a file that is no text. */
export interface Content {
  /** SHA-256 of the bytes, in hexadecimal digits. */
  readonly hash: string;
  readonly size: number;
}

export interface Step {
  /** What was done, for the person who may want it back: "move pump". */
  readonly what: string;
  readonly moves: readonly Move[];
}

export interface History {
  readonly done: readonly Step[];
  /** Nearest first. */
  readonly undone: readonly Step[];
}

export const EMPTY_HISTORY: History = { done: [], undone: [] };

export type Changed =
  | { readonly kind: "changed"; readonly texts: DesignTexts; readonly moves: readonly Move[] }
  | { readonly kind: "refused"; readonly why: string };

/** Carries out edits, of one file or of several: all of them or none. */
export function withEdits(texts: DesignTexts, edits: readonly TextEdit[]): Changed {
  const files = [...new Set(edits.map(({ file }) => file))];
  const next = new Map(texts);
  const moves: Move[] = [];
  for (const file of files) {
    const before = texts.get(file);
    if (before === undefined) return refused(`there is no file ${file} in the design`);
    const forth = edits.filter((edit) => edit.file === file);
    const result = applyEdits(before, forth);
    if (result.kind === "refused") return result;
    next.set(file, result.text);
    if (result.text !== before) moves.push({ kind: "edit", file, forth, back: result.undo });
  }
  return { kind: "changed", texts: next, moves };
}

/** Carries out moves one after the other; refused where a text is not the one that they were made for. */
export function withMoves(texts: DesignTexts, moves: readonly Move[]): Changed {
  let now = texts;
  for (const move of moves) {
    const next = withMove(now, move);
    if (next.kind === "refused") return next;
    now = next.texts;
  }
  return { kind: "changed", texts: now, moves };
}

function withMove(texts: DesignTexts, move: Move): Changed {
  switch (move.kind) {
    case "edit":
      return withEdits(texts, move.forth);
    case "presence":
      return withPresence(texts, move);
    case "bytes":
      return { kind: "changed", texts, moves: [move] };
  }
}

function withPresence(
  texts: DesignTexts,
  move: Extract<Move, { readonly kind: "presence" }>,
): Changed {
  const { file, before, after } = move;
  if ((texts.get(file) ?? null) !== before) return refused(`${file} has changed since`);
  const next = new Map(texts);
  if (after === null) next.delete(file);
  else next.set(file, after);
  return { kind: "changed", texts: next, moves: [move] };
}

/** Moves that take these back, in the order in which they must go. */
export const movesBack = (moves: readonly Move[]): readonly Move[] =>
  moves.toReversed().map(moveBack);

function moveBack(move: Move): Move {
  switch (move.kind) {
    case "edit":
      return { ...move, forth: move.back, back: move.forth };
    case "presence":
      return { ...move, before: move.after, after: move.before };
    case "bytes":
      return { ...move, before: move.after, after: move.before };
  }
}

/** A new step: what was undone before it can't be redone any more. */
export const withStep = (history: History, step: Step): History =>
  step.moves.length === 0 ? history : { done: [...history.done, step], undone: [] };

/**
 * A step that came from outside. What was undone can still be redone where the step has left its files alone; else it was
 * made for texts that are no more.
 */
export function withOutsideStep(history: History, step: Step): History {
  if (step.moves.length === 0) return history;
  const touched = new Set(step.moves.map(({ file }) => file));
  const meets = history.undone.some(({ moves }) => moves.some(({ file }) => touched.has(file)));
  return { done: [...history.done, step], undone: meets ? [] : history.undone };
}

/** Texts with their history, as they go together into a recovery copy. */
export interface Desk {
  readonly texts: DesignTexts;
  readonly history: History;
}

export type Stepped =
  | { readonly kind: "stepped"; readonly desk: Desk; readonly step: Step }
  | { readonly kind: "nothing" }
  | { readonly kind: "refused"; readonly why: string };

export function stepBack({ texts, history }: Desk): Stepped {
  const step = history.done.at(-1);
  if (step === undefined) return { kind: "nothing" };
  const changed = withMoves(texts, movesBack(step.moves));
  if (changed.kind === "refused") return changed;
  const left = { done: history.done.slice(0, -1), undone: [step, ...history.undone] };
  return { kind: "stepped", step, desk: { texts: changed.texts, history: left } };
}

export function stepForth({ texts, history }: Desk): Stepped {
  const [step, ...undone] = history.undone;
  if (step === undefined) return { kind: "nothing" };
  const changed = withMoves(texts, step.moves);
  if (changed.kind === "refused") return changed;
  const next = { done: [...history.done, step], undone };
  return { kind: "stepped", step, desk: { texts: changed.texts, history: next } };
}

const refused = (why: string): Changed => ({ kind: "refused", why });
