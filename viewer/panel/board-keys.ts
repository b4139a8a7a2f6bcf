// The sheet from the keyboard. Tab goes from thing to thing and, past the last one or after Escape, on to the next
// control; arrows nudge; letters do what the buttons under the sheet do.

import { nextRedo, nextUndo, redo, refusedStep, selection, undo } from "../desk.ts";
import { paperKey } from "../photo/photo-state.ts";
import { inTurn } from "../when-current.ts";
import { selectionWords } from "./acts.ts";
import { drag, gridStep, inHand, offer, say, sight, things } from "./board.ts";
import { type Deeds, withDeeds } from "./deeds-door.ts";
import { giveUp, nudge, settleNudge } from "./dragging.ts";
import { keepPick, pickWithKept } from "./kept-picks.ts";
import { latinKey } from "./latin-key.ts";
import type { Shift } from "./snap.ts";

/** Ten small steps: half a millimetre becomes five. */
const LARGE = 10;
const QUARTER = 90;

export interface BoardKeys {
  readonly zoom: (by: number) => void;
  readonly pan: (by: Shift) => void;
  readonly openDrawer: () => void;
  readonly toTicket: () => void;
}

const ARROWS: Readonly<Record<string, Shift>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

export function boardKey(event: KeyboardEvent, keys: BoardKeys): void {
  const isTaken =
    paperKey.value?.(event) === true ||
    (event.key in ARROWS ? arrow(event, keys) : commanded(event) || pressed(event, keys));
  if (isTaken) {
    event.preventDefault();
    event.stopPropagation();
  }
}

function arrow(event: KeyboardEvent, keys: BoardKeys): boolean {
  const toward = ARROWS[event.key];
  if (toward === undefined || event.ctrlKey || event.metaKey) return false;
  if (event.altKey) {
    keys.pan({ x: -toward.x * PAN, y: toward.y * PAN });
    return true;
  }
  const step = gridStep.value * (event.shiftKey ? LARGE : 1);
  const by = { x: toward.x * step, y: toward.y * step };
  const held = inHand.value;
  if (held.kind === "part")
    inHand.value = { ...held, at: { x: held.at.x + by.x, y: held.at.y + by.y } };
  else nudge(by);
  return true;
}

const PAN = 40;

function commanded(event: KeyboardEvent): boolean {
  if (!(event.ctrlKey || event.metaKey)) return false;
  settleNudge();
  switch (latinKey(event)) {
    case "z":
      inTurn(event.shiftKey ? redone : undone);
      return true;
    case "y":
      inTurn(redone);
      return true;
    case "a":
      selection.value = things.value.map(({ id }) => id);
      say(`${selection.value.length} selected`);
      return true;
    default:
      return false;
  }
}

function undone(): void {
  const what = nextUndo.value;
  undo();
  sayUndone(what, "There is nothing to take back.");
}

function redone(): void {
  const what = nextRedo.value;
  redo();
  sayUndone(what, "There is nothing to do again.");
}

/** What was done is said as the history takes it. */
function sayUndone(what: string | null, nothing: string): void {
  if (refusedStep.value !== null) say(`Not done: ${refusedStep.value}.`);
  else if (what === null) say(nothing);
}

/** After Escape, Tab leaves the sheet: nobody is held in it. */
let leavesNext = false;

function pressed(event: KeyboardEvent, keys: BoardKeys): boolean {
  if (event.key === "Tab") return tabbed(event.shiftKey ? -1 : 1);
  leavesNext = false;
  const acts: Readonly<Record<string, () => void>> = {
    Escape: escaped,
    Enter: () => entered(keys),
    " ": () => entered(keys),
    Delete: deed((deeds) => deeds.removeSelection()),
    Backspace: deed((deeds) => deeds.removeSelection()),
    t: deed((deeds) => deeds.turnSelection(event.shiftKey ? -QUARTER : QUARTER)),
    a: keepPick,
    c: deed((deeds) => deeds.copySelection()),
    e: deed((deeds) => deeds.spaceSelection()),
    g: deed((deeds) => deeds.gapSelection()),
    r: deed((deeds) => deeds.makePattern("row")),
    k: deed((deeds) => deeds.makePattern("column")),
    o: deed((deeds) => deeds.makePattern("ring")),
    l: deed((deeds) => deeds.lineUpSelection("level")),
    i: deed((deeds) => deeds.lineUpSelection("in-line")),
    Home: deed((deeds) => deeds.lineUpSelection("left")),
    End: deed((deeds) => deeds.lineUpSelection("right")),
    PageUp: deed((deeds) => deeds.lineUpSelection("top")),
    PageDown: deed((deeds) => deeds.lineUpSelection("bottom")),
    p: keys.openDrawer,
    "/": keys.openDrawer,
    "+": () => keys.zoom(1.25),
    "=": () => keys.zoom(1.25),
    "-": () => keys.zoom(0.8),
    "0": () => {
      sight.value = null;
    },
  };
  const act = acts[latinKey(event)];
  if (act === undefined) return false;
  if (event.key !== "Escape") settleNudge();
  act();
  return true;
}

const deed =
  (act: (deeds: Deeds) => void): (() => void) =>
  () =>
    withDeeds(act);

function escaped(): void {
  if (inHand.value.kind === "part") {
    inHand.value = { kind: "nothing" };
    say("Put back.");
  } else if (drag.value !== null) giveUp();
  else if (offer.value !== null) offer.value = null;
  else {
    selection.value = [];
    leavesNext = true;
    say("Nothing selected. Tab goes on to the next control.");
  }
}

function entered(keys: BoardKeys): void {
  const held = inHand.value;
  if (held.kind === "part") withDeeds(({ placePart }) => placePart(held.card, held.at));
  else keys.toTicket();
}

/** False where Tab is to go on to the next control. */
function tabbed(by: 1 | -1): boolean {
  const all = things.value;
  settleNudge();
  // What the pointer has picked since Escape is gone on from.
  const isLeft = leavesNext && selection.value.length === 0;
  leavesNext = false;
  if (isLeft || all.length === 0) return false;
  const last = selection.value.at(-1);
  const now = all.findIndex(({ id }) => id === last);
  const next = now < 0 ? (by > 0 ? 0 : all.length - 1) : now + by;
  const thing = all[next];
  if (thing === undefined) return false;
  pickWithKept(thing.id);
  say(selectionWords());
  return true;
}
