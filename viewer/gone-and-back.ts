// What has changed outside becomes steps of the desk's history. A file that went and came back leaves no step, or one change
// of its text: undo and redo would else take away again what stands there.

import { textMove } from "./files/text-move.ts";
import {
  type Desk,
  type History,
  type Move,
  type Step,
  withMoves,
  withOutsideStep,
} from "./history.ts";

export interface Outside {
  readonly steps: readonly Step[];
  /** Files that stand there and did not before. */
  readonly standing: readonly string[];
}

export type TakenOutside =
  | { readonly kind: "taken"; readonly desk: Desk }
  | { readonly kind: "refused"; readonly why: string };

/** The desk itself where nothing has changed. */
export function withOutside(desk: Desk, { steps, standing }: Outside): TakenOutside {
  let now = desk;
  for (const step of steps.filter(({ moves }) => moves.length > 0)) {
    const changed = withMoves(now.texts, step.moves);
    if (changed.kind === "refused") return changed;
    now = { texts: changed.texts, history: withOutsideJoined(now.history, step) };
  }
  return { kind: "taken", desk: standing.reduce(withoutGoing, now) };
}

/** Going and coming of a file are joined. Files are apart: what was done of others in between stays. */
function withOutsideJoined(history: History, { what, moves }: Step): History {
  let done = history.done;
  const left: Move[] = [];
  for (const move of moves) {
    const parted = move.kind === "presence" ? partedAt(done, move) : null;
    if (parted === null) left.push(move);
    else {
      done = parted.done;
      left.push(...parted.moves);
    }
  }
  return withOutsideStep({ ...history, done }, { what, moves: left });
}

interface Parted {
  /** Without the going. */
  readonly done: readonly Step[];
  /** What the coming has changed of the text that went. */
  readonly moves: readonly Move[];
}

/** null where the last that was done of the file is not its going. */
function partedAt(done: readonly Step[], { file, after }: Presence): Parted | null {
  const at = done.findLastIndex(({ moves }) => moves.some((move) => move.file === file));
  const step = done[at];
  const went = step?.moves.findLast((move) => move.file === file);
  if (step === undefined || went === undefined || !isGoing(went) || after === null) return null;
  return {
    done: done.flatMap((each) => (each === step ? withoutMove(each, went) : [each])),
    moves: went.before === after ? [] : [textMove(file, went.before, after)],
  };
}

/** A file that stands there again is not to be taken away by redo. */
function withoutGoing(desk: Desk, file: string): Desk {
  const { undone } = desk.history;
  const left = undone.flatMap((step) => {
    const went = step.moves.find((move) => move.file === file && isGoing(move));
    return went === undefined ? [step] : withoutMove(step, went);
  });
  const isSame = left.length === undone.length && left.every((step, at) => step === undone[at]);
  return isSame ? desk : { ...desk, history: { ...desk.history, undone: left } };
}

type Presence = Extract<Move, { readonly kind: "presence" }>;

const isGoing = (move: Move): move is Presence =>
  move.kind === "presence" && move.before !== null && move.after === null;

const withoutMove = (step: Step, gone: Move): readonly Step[] => {
  const moves = step.moves.filter((move) => move !== gone);
  return moves.length === 0 ? [] : [{ ...step, moves }];
};
