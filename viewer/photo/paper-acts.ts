// The sheet of paper of a photograph, taken in hand and moved and turned on the panel: the picture goes along until the text has
// its new place, which is one step of the history.

import { effect } from "@preact/signals";
import { lengthIn } from "../../src/design/length-text.ts";
import { sheetMoved } from "../../src/design/photo-edit.ts";
import { decimal } from "../../src/geometry/number.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { panel, settleWith } from "../desk.ts";
import { gridStep, say, unit } from "../panel/board.ts";
import { HAND_RESTS, onceDrawn, whenCurrent } from "../when-current.ts";
import {
  isLocked,
  isPhotoOpen,
  marks,
  type PaperInHand,
  type PaperPlace,
  paperInHand,
  paperKey,
  photo,
} from "./photo-state.ts";
import { photoStep } from "./photo-step.ts";

/** It is held as long as its drawer is open and there is one. */
export function keepPaper(): void {
  effect(() => {
    if (!isPhotoOpen.value || marks.value?.kind !== "sheet" || isLocked.value)
      paperKey.value = null;
  });
}

/** In hand or put down. False where it is not in hand now. */
export function takePaper(): boolean {
  if (paperKey.value !== null) {
    putPaperDown();
    return false;
  }
  if (isLocked.value) {
    say("The marks are locked.");
    return false;
  }
  paperKey.value = keyOfPaper;
  say(
    "The sheet of paper is in hand: draw it where it lay, or turn it by its round grip. Arrow keys move it, Page Up turns it counter-clockwise and Page Down clockwise, with Shift ten times as far; Escape puts it down.",
  );
  return true;
}

function putPaperDown(): void {
  settlePaper();
  paperKey.value = null;
  say("The sheet of paper is put down.");
}

/** The place that it has now, in hand or in the text; null where the marks are none of a sheet. */
const placeNow = (): PaperPlace | null =>
  marks.value?.kind === "sheet" ? marks.value.sheet : null;

/** Of a turn by hand, degrees. */
const TURN_STEP = 0.5;
/** Where the hand is to be followed closely: mm, degrees. */
const FINE_STEP = 0.1;

/** On the grid of the panel, or closely. */
export function holdPaper({ at, turn }: PaperPlace, isFree: boolean): void {
  const file = panel.value?.file;
  if (file === undefined || isLocked.value) return;
  const step = isFree ? FINE_STEP : gridStep.value;
  const turnStep = isFree ? FINE_STEP : TURN_STEP;
  const x = rounded(at.x, step);
  const y = rounded(at.y, step);
  paperInHand.value = {
    file,
    at: { x, y },
    turn: degrees(withinHalfTurn(rounded(turn, turnStep))),
  };
}

const FULL_TURN = 360;

const withinHalfTurn = (turn: number): number => turn - FULL_TURN * Math.round(turn / FULL_TURN);

/** On the step, without the noise of the product: five decimals are finer than what is written. */
const rounded = (value: number, step: number): number =>
  Number(decimal(Math.round(value / step) * step, 5));

/** The text gets it as soon as it is the one that was read. */
export function letPaperGo(): void {
  const held = paperInHand.value;
  if (held === null) return;
  whenCurrent(() => {
    setPaper(held);
    onceDrawn(() => {
      if (paperInHand.value === held) paperInHand.value = null;
    });
  });
}

function setPaper({ file, ...after }: PaperInHand): void {
  const now = photo.value?.marks;
  if (now?.kind !== "sheet" || panel.value?.file !== file) {
    say("The sheet of paper is not moved: another panel was opened meanwhile.");
    return;
  }
  const before = now.sheet;
  if (before.at.x === after.at.x && before.at.y === after.at.y && before.turn === after.turn)
    return;
  photoStep(
    (from) => sheetMoved(from, { before, after, unit: unit.value }),
    "move the sheet of paper",
    `: ${placeWords(after)}`,
  );
}

const placeWords = ({ at, turn }: PaperPlace): string => {
  const said = (value: number): string => lengthIn(unit.value, value);
  const turned = turn === 0 ? "not turned" : `turned ${decimal(turn, 2)}°`;
  return `its lower left corner at ${said(at.x)}, ${said(at.y)}, ${turned}`;
};

const ARROWS: Readonly<Record<string, { readonly x: number; readonly y: number }>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** Counter-clockwise is more. Keys that every keyboard has, and that Shift makes nothing else of. */
const TURNS: Readonly<Record<string, number>> = { PageUp: 1, PageDown: -1 };
const LARGE = 10;

function keyOfPaper(event: KeyboardEvent): boolean {
  const now = placeNow();
  if (now === null || event.altKey) return false;
  if (event.ctrlKey || event.metaKey) {
    settlePaper();
    return false;
  }
  const arrow = ARROWS[event.key];
  const turn = TURNS[event.key];
  const steps = event.shiftKey ? LARGE : 1;
  const far = gridStep.value * steps;
  if (arrow !== undefined)
    nudgePaper({ ...now, at: { x: now.at.x + arrow.x * far, y: now.at.y + arrow.y * far } });
  else if (turn !== undefined)
    nudgePaper({ ...now, turn: degrees(now.turn + turn * steps * TURN_STEP) });
  else if (event.key === "Escape" || event.key === "Enter") putPaperDown();
  else return false;
  return true;
}

/** Steps of the keys become one step of the history when the hand rests. */
let rest: ReturnType<typeof setTimeout> | null = null;

/** A step from where it is: what was written off the grid stays off it. */
function nudgePaper({ at, turn }: PaperPlace): void {
  const file = panel.value?.file;
  if (file === undefined) return;
  const place = { x: rounded(at.x, AS_WRITTEN), y: rounded(at.y, AS_WRITTEN) };
  paperInHand.value = {
    file,
    at: place,
    turn: degrees(withinHalfTurn(rounded(turn, AS_WRITTEN))),
  };
  if (rest !== null) clearTimeout(rest);
  rest = setTimeout(settlePaper, HAND_RESTS);
}

/** mm, degrees. */
const AS_WRITTEN = 0.001;

function settlePaper(): void {
  if (rest === null) return;
  clearTimeout(rest);
  rest = null;
  letPaperGo();
}

settleWith(settlePaper);
